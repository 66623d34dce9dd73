package putback.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds what an id of a sheet means from where it is written: plain, with a side, or with {@code other.}. */
final class References {
    private static final String OTHER = "other.";
    /** A guess for each of very many wrong ids would help nobody and take long. */
    private static final int MOST_GUESSES = 40;

    private final String kind;
    private final boolean sided;
    private final Map<String, Integer> byId = new LinkedHashMap<>();
    private int guesses;

    /**
     * @param kind what the ids name, for messages: part or joint
     */
    References(String kind, boolean sided) {
        this.kind = kind;
        this.sided = sided;
    }

    void put(String sidedId, int index) {
        byId.put(sidedId, index);
    }

    /** Whether the plain id exists once, not on a side. */
    boolean existsOnce(String id) {
        return byId.containsKey(id);
    }

    private boolean existsOnASide(String id) {
        return byId.containsKey(Side.LEFT.prefix() + id) || byId.containsKey(Side.RIGHT.prefix() + id);
    }

    static boolean carriesSide(String written) {
        return written.startsWith(Side.LEFT.prefix()) || written.startsWith(Side.RIGHT.prefix());
    }

    /** One index; two, left and right, for a sided thing named from where there is no side. */
    Found find(String written, Side from) {
        if (written.startsWith(OTHER)) {
            return other(written, from);
        }
        Integer exact = byId.get(written);
        if (exact != null) {
            return Found.at(List.of(exact));
        }
        if (from != Side.NONE) {
            Integer here = byId.get(from.prefix() + written);
            return here != null ? Found.at(List.of(here)) : nothing(written, from);
        }
        List<Integer> both = new ArrayList<>();
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Integer there = byId.get(side.prefix() + written);
            if (there != null) {
                both.add(there);
            }
        }
        return both.isEmpty() ? nothing(written, from) : Found.at(both);
    }

    private Found other(String written, Side from) {
        String id = written.substring(OTHER.length());
        if (from == Side.NONE) {
            return Found.wrong(written + ": there is no other side here" + (sided ? "" : ", the sheet has no sides")
                    + "; write " + id);
        }
        Integer there = byId.get(from.other().prefix() + id);
        return there != null ? Found.at(List.of(there)) : nothing(id, from.other());
    }

    private Found nothing(String id, Side from) {
        if (existsOnASide(id)) {
            return Found.wrong(
                    kind + " " + id + " does not exist on the " + from.word()
                            + "; it was removed there, or is written for the other side only",
                    kind + "s/" + from.prefix() + id);
        }
        String near = guesses++ < MOST_GUESSES ? Nearest.to(id, plainIds()) : "";
        return Found.wrong(
                "no " + kind + " is called " + id + (near.isEmpty() ? "" : "; maybe " + near), kind + "s/" + id);
    }

    private List<String> plainIds() {
        return byId.keySet().stream()
                .map(id -> carriesSide(id) ? id.substring(id.indexOf('.') + 1) : id)
                .distinct()
                .toList();
    }

    /**
     * What an id means.
     *
     * @param indices empty when nothing was found
     * @param wrong empty when something was
     * @param missing section and id of what is not there
     */
    record Found(List<Integer> indices, String wrong, String missing) {
        static Found at(List<Integer> indices) {
            return new Found(indices, "", "");
        }

        static Found wrong(String message) {
            return wrong(message, "");
        }

        static Found wrong(String message, String missing) {
            return new Found(List.of(), message, missing);
        }
    }
}
