package putback.app.cli;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What is owed, found by asking the whole list of events one question after the other: slowly, and with nothing but the
 * published rules and the JSON that everybody sees.
 */
final class OwingOracle {
    private final List<Map<?, ?>> steps;
    private final List<Map<?, ?>> events = new ArrayList<>();
    private final List<String> owed = new ArrayList<>();

    private OwingOracle(List<Map<?, ?>> steps, List<Map<?, ?>> all) {
        this.steps = steps;
        Set<Object> ids = new HashSet<>();
        for (Map<?, ?> event : all) {
            if (event.get("id") == null || ids.add(event.get("id"))) {
                events.add(event);
            }
        }
    }

    /** Kind and subject of each debt that nobody carries, sorted. */
    static List<String> owes(List<Map<?, ?>> steps, List<Map<?, ?>> events) {
        OwingOracle oracle = new OwingOracle(steps, events);
        oracle.joints();
        oracle.parts();
        oracle.followUps();
        List<String> left = new ArrayList<>();
        for (String debt : oracle.owed) {
            String subject = debt.substring(debt.lastIndexOf(' ') + 1);
            if (oracle.last(events.size(), oracle.is("carry").and(event -> isAbout(event, subject))) < 0) {
                left.add(debt);
            }
        }
        left.sort(null);
        return left;
    }

    private static boolean isAbout(Map<?, ?> event, String subject) {
        return subject.equals(event.get("joint"))
                || subject.equals(event.get("part"))
                || subject.equals(event.get("followUp"));
    }

    private Predicate<Map<?, ?>> is(String... words) {
        return event -> List.of(words).contains(event.get("do"));
    }

    private Predicate<Map<?, ?>> at(String key, String id, String... words) {
        return is(words).and(event -> id.equals(event.get(key)));
    }

    /** The last event before the given place that is so; -1 for none. */
    private int last(int before, Predicate<Map<?, ?>> so) {
        for (int i = Math.min(before, events.size()) - 1; i >= 0; i--) {
            if (so.test(events.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private List<Map<?, ?>> planned(String key, String id, String word) {
        List<Map<?, ?>> found = new ArrayList<>();
        for (Map<?, ?> step : steps) {
            if (word.equals(step.get("do")) && id.equals(step.get(key))) {
                found.add(step);
            }
        }
        return found;
    }

    private Set<String> mentioned(String key) {
        Set<String> ids = new LinkedHashSet<>();
        for (Map<?, ?> event : events) {
            if (event.get(key) instanceof String id) {
                ids.add(id);
            }
        }
        return ids;
    }

    /** Where the joint was opened last before the given place: by an undo, or by a new fastener on a tight one. */
    private int opened(String joint, int before) {
        for (int i = before - 1; i >= 0; i--) {
            boolean undo = at("joint", joint, "undo").test(events.get(i));
            boolean swap = at("joint", joint, "replace-fastener").test(events.get(i)) && tight(joint, i) >= 0;
            if (undo || swap) {
                return i;
            }
        }
        return -1;
    }

    /** Where the joint was tightened last so that it still held before the given place; -1 for nowhere. */
    private int tight(String joint, int before) {
        int tight = last(before, at("joint", joint, "tighten"));
        int loose = Math.max(last(before, at("joint", joint, "break-loose")), opened(joint, before));
        return tight > loose ? tight : -1;
    }

    private void joints() {
        int end = events.size();
        for (String joint : mentioned("joint")) {
            int damage = last(end, at("joint", joint, "break"));
            if (damage > last(end, at("joint", joint, "replace-fastener"))) {
                owed.add("broken " + joint);
            }
            boolean known = !planned("joint", joint, "undo").isEmpty();
            int opening = opened(joint, end);
            boolean out = opening >= 0 || last(end, at("joint", joint, "replace-fastener")) >= 0;
            boolean loosened = last(end, at("joint", joint, "break-loose")) > opening;
            boolean seated = last(end, at("joint", joint, "start", "run-down")) > opening;
            int tight = tight(joint, end);
            boolean wasTightened = last(end, at("joint", joint, "tighten")) > opening;
            if (!out && !loosened && !seated && !(known && wasTightened)) {
                continue;
            }
            if (out && !seated && !wasTightened) {
                owed.add("not started " + joint);
            } else if (known) {
                closed(joint, opening, tight, out || loosened || seated);
            } else if (tight < 0) {
                owed.add("not tightened " + joint);
            } else if (!looked(joint, tight)) {
                owed.add("second look " + joint);
            }
        }
    }

    private void closed(String joint, int opening, int tight, boolean touched) {
        List<Map<?, ?>> tightening = planned("joint", joint, "tighten");
        boolean started = last(events.size(), at("joint", joint, "start", "run-down", "tighten")) > opening;
        boolean loosened = last(events.size(), at("joint", joint, "break-loose")) > opening;
        boolean loose = tight < 0 && (!tightening.isEmpty() || loosened && !started);
        if (loose) {
            owed.add("not tightened " + joint);
        }
        boolean singleUse =
                planned("joint", joint, "start").stream().anyMatch(step -> "new".equals(step.get("fasteners")));
        int replaced = last(events.size(), at("joint", joint, "replace-fastener"));
        if (singleUse && touched && started && (replaced < 0 || replaced < opening)) {
            owed.add("fastener reused " + joint);
        }
        if (tight >= 0 && !tightening.isEmpty()) {
            tightened(joint, tight, tightening.get(0));
        }
        int closing = tightening.isEmpty() ? last(events.size(), at("joint", joint, "start", "run-down")) : tight;
        boolean looked =
                closing >= 0 && looked(joint, closing) || tightening.isEmpty() && tight >= 0 && looked(joint, tight);
        if (!planned("joint", joint, "second-look").isEmpty() && !loose && !looked) {
            owed.add("second look " + joint);
        }
    }

    private void tightened(String joint, int tight, Map<?, ?> step) {
        Map<?, ?> event = events.get(tight);
        for (Object id : (List<?>) Objects.requireNonNull(step.get("tightenAfter"))) {
            String followUp = String.valueOf(id);
            if (due(followUp, tight) && !due(followUp, events.size())) {
                owed.add("not tightened " + joint);
                return;
            }
        }
        Double read = number(event, "torqueNm");
        Double turned = number(event, "angleDeg");
        boolean excused = event.get("untorqued") != null && read == null;
        boolean wantsAngle = number(step, "angleDeg") != null;
        if (!excused && (number(step, "torqueNm") != null && read == null || wantsAngle && turned == null)) {
            owed.add("torque missing " + joint);
        }
        boolean outside = false;
        if (read != null && step.get("windowNm") instanceof List<?> window) {
            outside = read < ((BigDecimal) window.get(0)).doubleValue()
                    || read > ((BigDecimal) window.get(1)).doubleValue();
        }
        if (wantsAngle && turned != null) {
            double asked = Objects.requireNonNull(number(step, "angleDeg"));
            outside |= Math.abs(turned - asked) > 0.1 * asked;
        }
        if (outside) {
            owed.add("torque outside " + joint);
        }
        Object asked = step.get("tightenAt");
        Object stood = event.get("height") != null ? event.get("height") : height(tight, true);
        if (!"raised".equals(asked) && !fits(stood, asked)) {
            owed.add("wrong height " + joint);
        }
    }

    private static @Nullable Double number(Map<?, ?> map, String key) {
        return map.get(key) instanceof BigDecimal number ? number.doubleValue() : null;
    }

    /** How the car stood before the event, by the last change of height or by the last word of anybody. */
    private @Nullable Object height(int before, boolean changesOnly) {
        int said = last(
                before, event -> event.get("height") != null && (!changesOnly || "height".equals(event.get("do"))));
        return said < 0 ? null : events.get(said).get("height");
    }

    private static boolean fits(@Nullable Object stood, @Nullable Object asked) {
        return "any".equals(asked)
                || Objects.equals(stood, asked)
                || "ride height".equals(asked) && "on wheels".equals(stood);
    }

    private boolean looked(String joint, int closing) {
        for (int i = closing + 1; i < events.size(); i++) {
            if (at("joint", joint, "second-look").test(events.get(i)) && isLook(events.get(closing), events.get(i))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isLook(Map<?, ?> closing, Map<?, ?> look) {
        if (!closing.containsKey("at") || !look.containsKey("at")) {
            return !Objects.equals(closing.get("by"), look.get("by"));
        }
        Duration gap = Duration.between(
                Instant.parse(String.valueOf(closing.get("at"))), Instant.parse(String.valueOf(look.get("at"))));
        boolean other = !Objects.equals(closing.get("by"), look.get("by"));
        return !gap.isNegative() && (other || gap.toMinutes() >= 10);
    }

    private void parts() {
        int end = events.size();
        Set<String> renewed = new TreeSet<>();
        for (Map<?, ?> step : steps) {
            if ("renew".equals(step.get("do"))) {
                renewed.add(String.valueOf(step.get("part")));
            }
        }
        for (String part : renewed) {
            if (last(end, moves(part, "renew")) < 0) {
                owed.add("not renewed " + part);
            }
        }
        Set<String> all = new TreeSet<>(mentioned("part"));
        steps.forEach(
                step -> ((List<?>) Objects.requireNonNull(step.get("with"))).forEach(one -> all.add((String) one)));
        for (String part : all) {
            if (last(end, moves(part, "take-off")) > last(end, moves(part, "offer-up"))) {
                owed.add("part off " + part);
            }
            if (last(end, at("part", part, "break")) > last(end, moves(part, "renew"))) {
                owed.add("broken " + part);
            }
            aids(part);
        }
    }

    /** Events that move the part, by itself or in one piece with another by the plan's last word. */
    private Predicate<Map<?, ?>> moves(String part, String word) {
        return is(word).and(event -> {
            String main = String.valueOf(event.get("part"));
            List<Map<?, ?>> plan = planned("part", main, word);
            return part.equals(main)
                    || !plan.isEmpty()
                            && ((List<?>) Objects.requireNonNull(
                                            plan.get(plan.size() - 1).get("with")))
                                    .contains(part);
        });
    }

    private void aids(String part) {
        Set<Object> aids = new LinkedHashSet<>();
        for (Map<?, ?> event : events) {
            if (event.get("aid") != null) {
                aids.add(event.get("aid"));
            }
        }
        for (Object aid : aids) {
            Predicate<Map<?, ?>> same = event -> aid.equals(event.get("aid"));
            int on = last(events.size(), at("part", part, "support", "aside").and(same));
            if (on > last(events.size(), at("part", part, "release").and(same))) {
                owed.add("aid left " + part);
            }
        }
    }

    private boolean brings(Map<?, ?> event, String followUp) {
        return is("undo").test(event)
                && planned("joint", String.valueOf(event.get("joint")), "undo").stream()
                        .anyMatch(step -> ((List<?>) Objects.requireNonNull(step.get("brings"))).contains(followUp));
    }

    private boolean due(String followUp, int before) {
        int brought = last(before, event -> brings(event, followUp));
        return brought >= 0 && last(before, at("followUp", followUp, "follow-up")) < brought;
    }

    private void followUps() {
        int end = events.size();
        for (Map<?, ?> step : steps) {
            if (!"follow-up".equals(step.get("do"))) {
                continue;
            }
            String id = String.valueOf(step.get("followUp"));
            int brought = last(end, event -> brings(event, id));
            int done = last(end, at("followUp", id, "follow-up"));
            if (brought >= 0 && (done < brought || isDoneWrongly(step, done))) {
                owed.add("follow-up " + id);
            }
        }
    }

    private boolean isDoneWrongly(Map<?, ?> step, int done) {
        for (Object before : (List<?>) Objects.requireNonNull(step.get("follows"))) {
            if (due(String.valueOf(before), done) && !due(String.valueOf(before), events.size())) {
                return true;
            }
        }
        Object asked = step.get("doneAt");
        Object own = events.get(done).get("height");
        if (own != null) {
            return !fits(own, asked);
        }
        Object set = height(done, true);
        Object said = height(done, false);
        return set != null && said != null && !fits(set, asked) && !fits(said, asked);
    }
}
