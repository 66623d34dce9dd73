package putback.plan.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import putback.quantity.Angle;
import putback.quantity.Torque;
import putback.sheet.Condition;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Tightening;

/** How names and figures stand in a sentence. */
final class Words {
    private Words() {}

    /** A name inside a sentence: {@code strut, left}; {@code ABS lead, left} keeps its capitals. */
    static String low(String name) {
        boolean capitals = name.length() > 1 && !Character.isLowerCase(name.charAt(1)) && name.charAt(1) != ' ';
        return name.isEmpty() || capitals ? name : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** Whether an id is this word, or ends with a dash and it. */
    static boolean endsWith(String id, String word) {
        int before = id.length() - word.length();
        return id.endsWith(word) && (before == 0 || id.charAt(before - 1) == '-');
    }

    static String high(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    static String of(Joint joint) {
        return low(joint.name());
    }

    static String the(Part part) {
        return "the " + low(part.name());
    }

    /** {@code the link, the arm and the hub}. */
    static String the(List<Part> parts) {
        List<String> names = new ArrayList<>();
        for (Part part : parts) {
            names.add(the(part));
        }
        return list(names);
    }

    /** A part named beside another one: without its side where that is the same. */
    static String beside(Part part, Part main) {
        return low(part.side() == main.side() ? part.entry().name() : part.name());
    }

    /** {@code a, b and c}. */
    static String list(List<String> items) {
        if (items.size() < 2) {
            return String.join("", items);
        }
        return String.join(", ", items.subList(0, items.size() - 1)) + " and " + items.get(items.size() - 1);
    }

    static String listBeside(List<Part> parts, Part main) {
        List<String> names = new ArrayList<>();
        for (Part part : parts) {
            names.add(beside(part, main));
        }
        return list(names);
    }

    /** {@code , in one piece with the spring and top mount}; nothing where it is alone. */
    static String inOnePiece(List<Part> others, Part main) {
        return others.isEmpty() ? "" : ", in one piece with " + listBeside(others, main);
    }

    /** {@code 2 x M12x1.25}, or as much of it as is known. */
    static String fasteners(Fastener fastener) {
        String thread = fastener.thread() == null ? "" : fastener.thread();
        if (fastener.count() == 1) {
            return thread;
        }
        return fastener.count() + (thread.isEmpty() ? " of them" : " x " + thread);
    }

    static String they(Fastener fastener, String one, String several) {
        return fastener.count() == 1 ? one : several;
    }

    /** How tight, in both units, with condition and source. */
    static String tightness(Fastener fastener) {
        Tightening asked = fastener.tightening();
        if (asked instanceof Tightening.Unknown) {
            return "torque not known";
        }
        if (asked instanceof Tightening.Snug) {
            return "snug by hand";
        }
        String source = fastener.source() == null ? "source not given" : "source: " + fastener.source();
        return figure(asked) + ", " + hardware(fastener) + condition(fastener.condition()) + "; " + source;
    }

    private static String figure(Tightening asked) {
        if (asked instanceof Tightening.TorqueThenAngle both) {
            return torque(both.torque()) + ", then " + angle(both.angle()) + " further";
        }
        return asked instanceof Tightening.ToTorque one ? torque(one.torque()) : "";
    }

    static String torque(Torque torque) {
        return torque.text();
    }

    static String angle(Angle angle) {
        return angle.text();
    }

    private static String hardware(Fastener fastener) {
        return fastener.singleUse() ? "new, " : "re-used, ";
    }

    private static String condition(Condition condition) {
        return switch (condition) {
            case DRY -> "threads dry";
            case OILED -> "threads oiled";
            case LOCKER -> "with thread locker";
        };
    }

    /** The aid with its article: {@code a strap}. */
    static String an(String aid) {
        boolean vowel = !aid.isEmpty() && "aeiou".indexOf(Character.toLowerCase(aid.charAt(0))) >= 0;
        return (vowel ? "an " : "a ") + aid;
    }
}
