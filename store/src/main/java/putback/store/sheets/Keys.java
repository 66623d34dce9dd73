package putback.store.sheets;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Every key that a sheet may have, by the thing it belongs to. The published schema lists the same. */
final class Keys {
    static final Set<String> SHEET = keys(
            "sheet",
            "title",
            "base",
            "lift",
            "sides",
            "parts",
            "joints",
            "units",
            "follow-ups",
            "times",
            "resorts",
            "setups");
    static final Set<String> PART = keys(
            "name",
            "minutes",
            "price",
            "shared",
            "companions",
            "pair",
            "sold",
            "prepare",
            "aside",
            "tether",
            "stored-energy",
            "life");
    /** What a joint says of its fastener, and {@code with-new} may say again. */
    static final Set<String> FASTENER = keys(
            "count",
            "thread",
            "class",
            "hex",
            "hold",
            "torque",
            "source",
            "condition",
            "critical",
            "tighten",
            "once",
            "window",
            "turn");

    static final Set<String> JOINT = keys(
            FASTENER,
            "name",
            "joins",
            "kind",
            "break-loose",
            "loosen-before",
            "tighten-after",
            "behind",
            "after",
            "before-opening",
            "pivot",
            "reach-on-wheels",
            "ahead-of",
            "lets-go",
            "spoils",
            "stays-shut",
            "look",
            "mark",
            "before-closing",
            "with-new",
            "brings",
            "tool",
            "station",
            "height",
            "minutes",
            "resorts",
            "exposure");
    static final Set<String> UNIT = keys("name", "parts", "price", "pair", "sold", "companions", "prepare");
    static final Set<String> FOLLOW_UP = keys("name", "minutes", "source", "critical", "height", "follows");
    static final Set<String> RESORT = keys("minutes", "chance", "breaks", "scraps", "when");
    static final Set<String> LIFT = keys("points", "note");
    static final Set<String> TIMES = keys("spread", "common");
    static final Set<String> SETUPS = keys("height", "side", "station", "tool");
    static final Set<String> ASIDE = keys("open", "minutes", "aid");
    static final Set<String> TETHER = keys("kind", "free", "plunge");
    static final Set<String> LIFE = keys("median", "shape");
    static final Set<String> HOLD = keys("hex", "key");
    static final Set<String> TORQUE = keys("torque", "angle");
    static final Set<String> LETS_GO = keys("part", "aid", "then");
    static final Set<String> MINUTES = keys("open", "close", "spread");
    static final Set<String> BREAKS = keys("chance", "price");

    /** What a file of the garage's tools may have; the published schema is for sheets alone. */
    static final Set<String> TOOLBOX = keys(
            "toolbox",
            "title",
            "calibrate",
            "sockets",
            "pass-through-sockets",
            "spanners",
            "flare-spanners",
            "crowfoot-adapters",
            "hex-keys",
            "bits",
            "other",
            "aids",
            "wrenches");

    static final Set<String> CALIBRATE = keys("months", "operations");
    static final Set<String> AID = keys("count", "rating", "note");
    static final Set<String> WRENCH = keys(
            "name",
            "range",
            "step",
            "deviation",
            "drive",
            "length",
            "left-hand",
            "angle",
            "calibrated",
            "operations",
            "dropped");
    /** What a file of resorts for one fastener may have; the published schema is for sheets alone. */
    static final Set<String> RESORTS_FILE = keys("rate", "refuses", "near", "resorts");

    static final Set<String> ATTEMPT = keys(RESORT, "hazards");

    /** What a place asks of an estimate. */
    static final Set<String> PLACE = keys(
            "place",
            "name",
            "currency",
            "before",
            "written-consent",
            "carries",
            "over",
            "beyond",
            "old-parts",
            "warranty",
            "source");

    static final Set<String> OVERRUN = keys("amount", "percent", "which", "most");

    /** What a file of one suspension may have. */
    static final Set<String> CORNER =
            keys("suspension", "side", "points", "spin-axis", "tyre-radius", "adjust", "ties");

    static final Set<String> STRUT_POINTS = keys(
            "arm-front",
            "arm-rear",
            "ball-joint",
            "strut-top",
            "strut-lower",
            "rod-inner",
            "rod-outer",
            "wheel-centre");
    static final Set<String> WISHBONE_POINTS = keys(
            "lower-front",
            "lower-rear",
            "lower-ball",
            "upper-front",
            "upper-rear",
            "upper-ball",
            "rod-inner",
            "rod-outer",
            "wheel-centre");
    static final Set<String> TIE = keys("kind", "from", "to", "free", "plunge");
    static final Set<String> ADJUST = keys("bolt", "rod");
    static final Set<String> BOLT = keys("pivot", "spacing");
    static final Set<String> ROD = keys("pitch");

    /** What a file of wheel angles may have. */
    static final Set<String> ANGLES = keys(
            "title",
            "front",
            "rear",
            "toe-read-at",
            "steering-ratio",
            "wheelbase",
            "track",
            "ride-height",
            "gauge",
            "wanted",
            "adjusters");

    static final Set<String> SIDES = keys("left", "right");
    static final Set<String> AXLES = keys("front", "rear");
    static final Set<String> FRONT_WHEEL = keys("camber", "toe", "caster", "sai", "sweep");
    static final Set<String> REAR_WHEEL = keys("camber", "toe");
    static final Set<String> SWEEP = keys("toe", "camber");
    static final Set<String> GAUGE = keys("camber", "toe", "steer", "caster", "sai");
    static final Set<String> WANTED_WHEEL = keys("camber", "toe", "caster", "sai", "included");
    static final Set<String> WANTED_FRONT =
            keys(WANTED_WHEEL, "total-toe", "cross-camber", "cross-caster", "cross-sai", "left", "right");
    static final Set<String> WANTED_REAR =
            keys("camber", "toe", "total-toe", "cross-camber", "thrust", "left", "right");
    static final Set<String> AT_HEIGHT = keys("at", "of", "range");

    /** The maps under the top of a sheet whose keys are ids. */
    static final Set<String> SECTIONS = keys("parts", "joints", "units", "follow-ups", "resorts");

    private Keys() {}

    private static Set<String> keys(String... keys) {
        return keys(Set.of(), keys);
    }

    /** In the order given, which is the order in which they are told. */
    private static Set<String> keys(Set<String> first, String... more) {
        Set<String> keys = new LinkedHashSet<>(first);
        Collections.addAll(keys, more);
        return Collections.unmodifiableSet(keys);
    }

    /** All of them by the name of their definition in the schema; the sheet itself under {@code sheet}. */
    static Map<String, Set<String>> all() {
        return Map.ofEntries(
                Map.entry("sheet", SHEET),
                Map.entry("part", PART),
                Map.entry("joint", JOINT),
                Map.entry("fastener", FASTENER),
                Map.entry("unit", UNIT),
                Map.entry("follow-up", FOLLOW_UP),
                Map.entry("resort", RESORT),
                Map.entry("lift", LIFT),
                Map.entry("times", TIMES),
                Map.entry("setups", SETUPS),
                Map.entry("aside", ASIDE),
                Map.entry("tether", TETHER),
                Map.entry("life", LIFE),
                Map.entry("hold", HOLD),
                Map.entry("torque-and-angle", TORQUE),
                Map.entry("letting", LETS_GO),
                Map.entry("joint-minutes", MINUTES),
                Map.entry("breaks", BREAKS));
    }
}
