package putback.app.web.frame;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.sheet.Side;

/**
 * What a page asks the planner.
 *
 * @param sheet id of a stock sheet
 * @param renew names of parts and units
 * @param side left, right or both
 */
public record Question(String sheet, List<String> renew, String side) {
    private static final int MOST_NAMES = 200;

    public Question {
        renew = List.copyOf(renew);
    }

    /** Reads what an address gives; one value may name several things with commas between them. */
    public static Question of(@Nullable String sheet, List<String> values, @Nullable String side) {
        List<String> names = new ArrayList<>();
        for (String value : values) {
            for (String name : value.split(",", -1)) {
                if (!name.isBlank() && !names.contains(name.strip()) && names.size() < MOST_NAMES) {
                    names.add(name.strip());
                }
            }
        }
        return new Question(sheet == null ? "" : sheet, names, side == null || side.isEmpty() ? "both" : side);
    }

    /** The sides that are meant; none when the word is not understood. */
    Set<Side> sides() {
        return switch (side) {
            case "left" -> Set.of(Side.LEFT);
            case "right" -> Set.of(Side.RIGHT);
            case "both" -> Set.of(Side.LEFT, Side.RIGHT);
            default -> Set.of();
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

    /** Where a job is opened for the car whose own sheet is meant; empty when a stock sheet is. */
    public String jobAddress() {
        return sheet.startsWith(Shelf.OF_CAR) ? address("/car/" + sheet.substring(Shelf.OF_CAR.length())) : "";
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
