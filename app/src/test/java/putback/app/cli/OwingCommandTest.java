package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.app.json.JsonTree;

/** A whole job is done in events, then one thing is left out or done wrong, and exactly that is owed. */
class OwingCommandTest {
    @TempDir
    Path folder;

    private Path plan;
    private final List<String> done = new ArrayList<>();

    @BeforeEach
    void aWholeJob() throws IOException {
        plan = folder.resolve("plan.json");
        String json = Said.by("plan", "demo-van", "--renew", "spring,damper,pads", "--json")
                .out();
        Files.writeString(plan, json);
        int minute = 0;
        for (Object one : (List<?>) ((Map<?, ?>) JsonTree.read(json)).get("steps")) {
            Map<?, ?> step = (Map<?, ?>) one;
            minute++;
            if (step.get("do").equals("start") && "new".equals(step.get("fasteners"))) {
                done.add("{\"do\":\"replace-fastener\",\"joint\":\"" + step.get("joint") + "\",\"by\":\"M\"}");
            }
            done.add(event(step, minute));
        }
    }

    private static String event(Map<?, ?> step, int minute) {
        String by = step.get("do").equals("second-look") ? "K" : "M";
        StringBuilder event = new StringBuilder("{\"do\":\"" + step.get("do") + "\",\"by\":\"" + by + "\"");
        event.append(",\"at\":\"2026-03-02T%02d:%02d:00Z\"".formatted(8 + 5 * minute / 60, 5 * minute % 60));
        for (String key : List.of("joint", "part", "aid", "followUp", "height", "torqueNm", "angleDeg")) {
            Object value = step.get(key);
            if (value != null) {
                event.append(",\"").append(key).append("\":");
                event.append(value instanceof String ? "\"" + value + "\"" : value);
            }
        }
        return event.append('}').toString();
    }

    private Said owing(List<String> events) throws IOException {
        Path file = folder.resolve("events.jsonl");
        Files.write(file, events);
        return Said.by("owing", "--plan", plan.toString(), "--ledger", file.toString(), "--json");
    }

    private List<String> owes(List<String> events) throws IOException {
        Map<?, ?> json = (Map<?, ?>) JsonTree.read(owing(events).out());
        List<String> owes = new ArrayList<>();
        for (Object one : (List<?>) json.get("owes")) {
            Map<?, ?> debt = (Map<?, ?>) one;
            Object subject = debt.get("joint") != null
                    ? debt.get("joint")
                    : debt.get("part") != null ? debt.get("part") : debt.get("followUp");
            owes.add(debt.get("kind") + " " + subject);
        }
        return owes;
    }

    private List<String> without(Predicate<String> left) {
        return done.stream().filter(left.negate()).toList();
    }

    private static Predicate<String> is(String act, String of) {
        return event -> event.contains("\"do\":\"" + act + "\"") && event.contains("\"" + of + "\"");
    }

    private List<String> with(String... more) {
        List<String> all = new ArrayList<>(done);
        all.addAll(List.of(more));
        return all;
    }

    @Test
    void aJobDoneAsPlanned_isSettled() throws IOException {
        Said said = owing(done);
        assertThat(said.out()).contains("\"settled\":true,\"owes\":[]", "\"mayBeDriven\":true");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
    }

    @ParameterizedTest
    @CsvSource({
        "tighten, left.wheel-nuts, not tightened left.wheel-nuts",
        "second-look, left.wheel-nuts, second look left.wheel-nuts",
        "offer-up, left.wheel, part off left.wheel",
        "release, left.caliper, aid left left.caliper",
        "renew, left.damper, not renewed left.damper",
        "replace-fastener, left.damper-upper, fastener reused left.damper-upper",
        "follow-up, pedal, follow-up pedal"
    })
    void whatIsLeftOut_isOwed_andNothingElse(String act, String of, String owed) throws IOException {
        List<String> events = without(is(act, of));
        assertThat(events).hasSizeLessThan(done.size());
        assertThat(owes(events)).containsExactly(owed);
        assertThat(owing(events).exit()).isEqualTo(Exit.OWES);
    }

    @Test
    void anyOneClosingStep_leftOut_isMissed() throws IOException {
        for (int i = 0; i < done.size(); i++) {
            String event = done.get(i);
            boolean closes = event.contains("\"do\":\"tighten\"") || event.contains("\"do\":\"offer-up\"");
            if (closes) {
                List<String> events = new ArrayList<>(done);
                events.remove(i);
                assertThat(owes(events)).as(event).hasSize(1);
            }
        }
    }

    @Test
    void aReadingOutside_aWrongHeight_andNoReading_areOwed() throws IOException {
        String nuts = "{\"do\":\"tighten\",\"joint\":\"left.wheel-nuts\",\"by\":\"M\",\"at\":\"2026-03-02T23:00:00Z\"";
        String look = "{\"do\":\"second-look\",\"joint\":\"left.wheel-nuts\",\"by\":\"K\"}";
        assertThat(owes(with(nuts + ",\"height\":\"on wheels\",\"torqueNm\":117}", look)))
                .containsExactly("torque outside left.wheel-nuts");
        assertThat(owes(with(nuts + ",\"height\":\"on wheels\"}", look)))
                .containsExactly("torque missing left.wheel-nuts");
        assertThat(owes(with(nuts + ",\"height\":\"raised\",\"torqueNm\":110}", look)))
                .containsExactly("wrong height left.wheel-nuts");
        assertThat(owes(with(nuts + ",\"height\":\"on wheels\",\"untorqued\":\"no wrench of that size\"}", look)))
                .isEmpty();
    }

    @Test
    void onWheels_isRideHeightToo() throws IOException {
        String bolt = "{\"do\":\"tighten\",\"joint\":\"left.damper-lower\",\"torqueNm\":95,\"by\":\"M\",\"height\":\"";
        String look = "{\"do\":\"second-look\",\"joint\":\"left.damper-lower\",\"by\":\"K\"}";
        assertThat(owes(with(bolt + "on wheels\"}", look))).isEmpty();
        assertThat(owes(with(bolt + "raised\"}", look))).containsExactly("wrong height left.damper-lower");
    }

    @Test
    void secondLook_isByAnother_orTenMinutesLater() throws IOException {
        String nuts =
                "{\"do\":\"tighten\",\"joint\":\"left.wheel-nuts\",\"by\":\"M\",\"at\":\"2026-03-02T23:00:00Z\",\"height\":\"on wheels\",\"torqueNm\":110}";
        String look = "{\"do\":\"second-look\",\"joint\":\"left.wheel-nuts\",\"by\":\"M\",\"at\":\"2026-03-02T23:";
        assertThat(owes(with(nuts, look + "09:59Z\"}"))).containsExactly("second look left.wheel-nuts");
        assertThat(owes(with(nuts, look + "10:00Z\"}"))).isEmpty();
        assertThat(owes(with(nuts, look.replace("\"M\"", "\"K\"") + "00:01Z\"}")))
                .isEmpty();
    }

    @Test
    void anUndoAfterwards_opensItAgain_plannedOrNot() throws IOException {
        assertThat(owes(with("{\"do\":\"undo\",\"joint\":\"left.pipe-union\"}")))
                .containsExactly("not started left.pipe-union");
        assertThat(owes(with("{\"do\":\"undo\",\"joint\":\"left.wheel-nuts\"}")))
                .containsExactly("not started left.wheel-nuts");
    }

    @Test
    void whatIsDamaged_isOwed_untilItIsRenewed() throws IOException {
        String breaks = "{\"do\":\"break\",\"part\":\"left.sensor\"}";
        assertThat(owes(with(breaks))).containsExactly("broken left.sensor");
        assertThat(owes(with(breaks, "{\"do\":\"renew\",\"part\":\"left.sensor\"}")))
                .isEmpty();
    }

    @Test
    void whatIsCarried_isSettled_butNotToBeDriven() throws IOException {
        List<String> events = new ArrayList<>(without(is("follow-up", "pedal")));
        events.add("{\"do\":\"carry\",\"followUp\":\"pedal\",\"by\":\"M\",\"reason\":\"waits for a seal\"}");
        Said said = owing(events);
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out()).contains("\"settled\":true", "waits for a seal", "\"mayBeDriven\":false");
    }

    @Test
    void anEventSentTwice_countsOnce() throws IOException {
        String undo = "{\"id\":\"7\",\"do\":\"undo\",\"joint\":\"left.boot-trim\"}";
        String start = "{\"id\":\"8\",\"do\":\"start\",\"joint\":\"left.boot-trim\"}";
        assertThat(owes(with(undo, start, undo))).doesNotContain("not started left.boot-trim");
    }

    @Test
    void aFastenerReplacedAfterItWasTight_isNotTight() throws IOException {
        assertThat(owes(with("{\"do\":\"replace-fastener\",\"joint\":\"left.wheel-nuts\"}")))
                .containsExactly("not started left.wheel-nuts");
    }

    @Test
    void untorqued_doesNotExcuseAReadingOutside() throws IOException {
        String nuts =
                "{\"do\":\"tighten\",\"joint\":\"left.wheel-nuts\",\"by\":\"M\",\"height\":\"on wheels\",\"torqueNm\":5,\"untorqued\":\"x\"}";
        String look = "{\"do\":\"second-look\",\"joint\":\"left.wheel-nuts\",\"by\":\"K\"}";
        assertThat(owes(with(nuts, look))).containsExactly("torque outside left.wheel-nuts");
        assertThat(owes(with(nuts, look.replace("\"K\"", "\"m \"")))).contains("second look left.wheel-nuts");
    }

    private String said(List<String> events, String... options) throws IOException {
        Path file = folder.resolve("events.jsonl");
        Files.write(file, events);
        List<String> words = new ArrayList<>(List.of("owing", "--plan", plan.toString(), "--ledger", file.toString()));
        words.addAll(List.of(options));
        return Said.by(words.toArray(new String[0])).out();
    }

    @Test
    void aJointThatThePlanDoesNotKnow_wantsALook_howeverTightItIsSaidToBe() throws IOException {
        String undo = "{\"do\":\"undo\",\"joint\":\"left.pipe-union\",\"by\":\"M\"}";
        String start = "{\"do\":\"start\",\"joint\":\"left.pipe-union\",\"by\":\"M\"}";
        String tight = "{\"do\":\"tighten\",\"joint\":\"left.pipe-union\",\"by\":\"M\",\"torqueNm\":16}";
        String look = "{\"do\":\"second-look\",\"joint\":\"left.pipe-union\",\"by\":\"K\"}";
        assertThat(owes(with(undo, start))).containsExactly("not tightened left.pipe-union");
        assertThat(owes(with(undo, start, tight))).containsExactly("second look left.pipe-union");
        assertThat(owing(with(undo, start, tight)).out()).contains("the plan does not know it: what torque it asks");
        assertThat(owes(with(undo, start, tight, look))).isEmpty();
        assertThat(owes(with(tight))).isEmpty();
    }

    @Test
    void anIdUsedForAnotherEvent_isAFaultOfItsLine() throws IOException {
        Said said = owing(List.of(
                "{\"id\":\"7\",\"do\":\"undo\",\"joint\":\"left.wheel-nuts\"}",
                "{\"id\":\"7\",\"do\":\"undo\",\"joint\":\"left.wheel-nuts\"}",
                "{\"id\":\"7\",\"do\":\"start\",\"joint\":\"left.wheel-nuts\"}"));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err().lines())
                .singleElement()
                .asString()
                .contains("events.jsonl:3:1: id \"7\" is that of another event, in line 1;");
    }

    @Test
    void whatWasTickedByMistake_isCorrected() throws IOException {
        String wrong = "{\"id\":\"w\",\"do\":\"undo\",\"joint\":\"left.wheel-nuts\"}";
        String right = "{\"id\":\"r\",\"do\":\"correct\",\"corrects\":\"w\",\"reason\":\"the other side\"}";
        assertThat(owes(with(wrong))).containsExactly("not started left.wheel-nuts");
        assertThat(owes(with(wrong, right))).isEmpty();
        assertThat(owing(with("{\"do\":\"correct\",\"reason\":\"x\"}")).err())
                .contains("correct has no corrects, which it needs");
    }

    @Test
    void followUps_inTheWrongOrder_orAtTheWrongHeight_areDoneAgain() throws IOException {
        Path brake = folder.resolve("brake.json");
        Files.writeString(
                brake,
                Said.by("plan", "front-brake", "--renew", "hose", "--side", "left", "--json")
                        .out());
        plan = brake;
        String undo = "{\"do\":\"undo\",\"joint\":\"left.hose-to-caliper\"}";
        String pedal = "{\"do\":\"follow-up\",\"followUp\":\"pedal\",\"height\":\"raised\"}";
        String bleed = pedal.replace("pedal", "bleed");
        String unions = pedal.replace("pedal", "unions");
        assertThat(owes(List.of(undo, bleed, pedal, unions))).noneMatch(debt -> debt.startsWith("follow-up"));
        assertThat(owes(List.of(undo, pedal, bleed, unions))).contains("follow-up pedal");
        assertThat(owes(List.of(undo, pedal, unions)))
                .contains("follow-up bleed")
                .doesNotContain("follow-up pedal");
        assertThat(owes(List.of(undo, bleed, pedal, unions.replace("raised", "on wheels"))))
                .contains("follow-up unions");
        assertThat(owes(List.of(undo, bleed, pedal, unions.replace(",\"height\":\"raised\"", ""))))
                .doesNotContain("follow-up unions");
    }

    @Test
    void aLockNutTightenedBeforeItsFollowUp_isTightenedAgain() throws IOException {
        plan = folder.resolve("rod.json");
        Files.writeString(
                plan,
                Said.by("plan", "front-strut", "--renew", "track-rod-end", "--side", "left", "--json")
                        .out());
        String undo = "{\"do\":\"undo\",\"joint\":\"left.lock-nut\"}";
        String carrier = "{\"do\":\"undo\",\"joint\":\"left.track-rod-end-to-carrier\"}";
        String tight = "{\"do\":\"tighten\",\"joint\":\"left.lock-nut\",\"torqueNm\":60,\"height\":\"on wheels\"}";
        String angles = "{\"do\":\"follow-up\",\"followUp\":\"angles\",\"height\":\"on wheels\"}";
        assertThat(owes(List.of(undo, carrier, angles, tight))).doesNotContain("not tightened left.lock-nut");
        assertThat(owes(List.of(undo, carrier, tight, angles))).contains("not tightened left.lock-nut");
        assertThat(owes(List.of(undo, carrier, tight)))
                .contains("follow-up angles")
                .doesNotContain("not tightened left.lock-nut");
    }

    @Test
    void wheelNutsThatNobodyMeasured_andACarStillRaised_areNotDriven() throws IOException {
        String nuts =
                "{\"do\":\"tighten\",\"joint\":\"left.wheel-nuts\",\"by\":\"M\",\"height\":\"on wheels\",\"untorqued\":\"no wrench\"}";
        String look = "{\"do\":\"second-look\",\"joint\":\"left.wheel-nuts\",\"by\":\"K\"}";
        assertThat(owing(with(nuts, look)).out())
                .contains("\"settled\":true", "\"mayBeDriven\":false", "wheel nuts, left tightened without a reading");
        assertThat(owing(with("{\"do\":\"height\",\"height\":\"raised\"}")).out())
                .contains("\"settled\":true", "\"mayBeDriven\":false", "the car still stands raised");
    }

    @Test
    void clocksThatDisagree_areRemarkedOn_andTheLedgersOrderCounts() throws IOException {
        String undo = "{\"do\":\"undo\",\"joint\":\"left.wheel-nuts\",\"at\":\"2026-03-03T10:00:00Z\"}";
        String tight =
                "{\"do\":\"tighten\",\"joint\":\"left.wheel-nuts\",\"by\":\"M\",\"at\":\"2026-03-03T09:00:00Z\",\"height\":\"on wheels\",\"torqueNm\":110}";
        String look = "{\"do\":\"second-look\",\"joint\":\"left.wheel-nuts\",\"by\":\"K\"}";
        assertThat(owes(with(undo, tight, look))).isEmpty();
        assertThat(owing(with(undo, tight, look)).out()).contains("dated before it was undone");
    }

    @Test
    void theText_namesThings_andPrintsWhatIsOutsideSoThatItShows() throws IOException {
        String nuts =
                "{\"do\":\"tighten\",\"joint\":\"left.wheel-nuts\",\"by\":\"M\",\"height\":\"on wheels\",\"torqueNm\":116.004}";
        String text = said(with(nuts), "--state");
        assertThat(text)
                .contains("Wheel nuts, left: 116.004 N·m (85.56 lbf·ft) read", "Last written by M")
                .contains("Do not drive it: wheel nuts, left: ")
                .doesNotContain("left.wheel-nuts");
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void theState_isInTheJson() throws IOException {
        Map<?, ?> all = (Map<?, ?>) JsonTree.read(owing(done.subList(0, 12)).out());
        Map<?, ?> state = (Map<?, ?>) all.get("state");
        assertThat(state.get("height")).isEqualTo("raised");
        assertThat(((Map<?, ?>) state.get("joints")).get("left.wheel-nuts")).isEqualTo("out");
        assertThat((Map<?, ?>) state.get("next")).isNotNull();
        assertThat((List<?>) state.get("mustNot")).isNotEmpty();
    }

    @Test
    void uglyFiles_getAFaultLineEach() throws IOException {
        Said said = owing(List.of(
                "{\"do\":\"undo\"}",
                "",
                "[1]",
                "{\"do\":\"tightn\",\"joint\":\"a\"}",
                "{\"do\":\"tighten\",\"joint\":\"a\",\"torqueNm\":-3}",
                "{\"do\":\"carry\",\"joint\":\"a\"}",
                "{\"do\":\"look\",\"at\":\"yesterday\"}",
                "{\"do\":"));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err().lines().toList())
                .hasSize(7)
                .anySatisfy(line -> assertThat(line).contains("events.jsonl:1:1: undo has no joint"))
                .anySatisfy(
                        line -> assertThat(line).contains(":4:1: \"tightn\" is nothing that is done; write tighten"))
                .anySatisfy(line -> assertThat(line).contains(":5:").contains("\"-3\" is not a number"))
                .anySatisfy(line -> assertThat(line).contains(":6:1: carry has no reason"))
                .noneSatisfy(line -> assertThat(line).contains("Exception"));
        assertThat(Said.by("owing", "--plan", "no.json", "--ledger", "no.jsonl").exit())
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(Said.by("owing").err()).contains("--plan is missing");
    }

    @Test
    void brokenLines_neverThrow() throws IOException {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            StringBuilder line = new StringBuilder(done.get(random.nextInt(done.size())));
            for (int i = 0; i < 3; i++) {
                line.setCharAt(random.nextInt(line.length()), "{}[]:,\"' 0\t".charAt(random.nextInt(11)));
            }
            assertThat(owing(List.of(line.toString())).exit())
                    .as("seed " + seed)
                    .isIn(Exit.BAD_INPUT, Exit.OWES);
        }
    }
}
