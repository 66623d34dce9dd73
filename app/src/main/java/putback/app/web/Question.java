package putback.app.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import putback.sheet.Side;

/**
 * What a page asks the planner.
 *
 * @param sheet id of a stock sheet
 * @param renew names of parts and units
 * @param side left, right or both
 */
public record Question(String sheet, List<String> renew, String side) {
    public Question {
        renew = List.copyOf(renew);
    }

    Set<Side> sides() {
        return switch (side) {
            case "left" -> Set.of(Side.LEFT);
            case "right" -> Set.of(Side.RIGHT);
            default -> Set.of(Side.LEFT, Side.RIGHT);
        };
    }

    /** The address of its page, below a path such as {@code /plan}. */
    public String address(String path) {
        StringBuilder address = new StringBuilder(path).append("?sheet=").append(coded(sheet));
        for (String name : renew) {
            address.append("&renew=").append(coded(name));
        }
        return address.append("&side=").append(coded(side)).toString();
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
