package putback.store.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.WantedNames;
import putback.plan.selection.WantedNames.Understood;
import putback.quantity.Minutes;
import putback.sheet.Assembly;
import putback.sheet.Side;
import putback.store.sheets.Option;
import putback.store.sheets.Question;
import putback.store.sheets.QuestionReader;
import putback.store.sheets.QuestionsRead;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** Whatever is answered, the car that comes of it can be taken apart and put together. */
class QuestionsTest {
    private static final Map<String, List<String>> USUAL = Map.of(
            "front-strut",
            List.of(
                    "strut",
                    "complete-strut",
                    "spring",
                    "link",
                    "complete-arm",
                    "ball-joint",
                    "bearing",
                    "hub",
                    "half-shaft",
                    "disc",
                    "pads",
                    "track-rod-end"),
            "front-brake",
            List.of("pads", "pad-set", "disc", "caliper", "hose"),
            "twist-beam",
            List.of("damper", "spring", "hub-unit", "pads", "disc", "caliper-with-bracket", "beam-hose"));

    private record Answered(Overlay overlay, String said) {}

    private static List<Answered> all(String sheet) {
        List<Answered> all = List.of(new Answered(Overlay.on("car-1", "Car", List.of(sheet)), sheet));
        for (Question question : QuestionReader.stock(sheet).questions()) {
            List<Answered> more = new ArrayList<>();
            for (Answered before : all) {
                for (Option option : question.options()) {
                    more.add(new Answered(
                            before.overlay().answered(question, option.id()), before.said() + " " + option.id()));
                }
            }
            all = more;
        }
        return all;
    }

    static Assembly assembly(Overlay overlay) {
        Read read = SheetReader.text("car-1", overlay.write());
        assertThat(read).as(overlay.write()).isInstanceOf(Read.Sheet.class);
        return ((Read.Sheet) read).assembly();
    }

    private static Plan plan(Assembly assembly, List<String> renew) {
        Understood understood = WantedNames.understand(assembly, renew, Set.of(Side.LEFT));
        assertThat(understood).isInstanceOf(Understood.Clear.class);
        Planned planned = Planner.plan(assembly, ((Understood.Clear) understood).wanted());
        assertThat(planned).isInstanceOf(Planned.Sound.class);
        return ((Planned.Sound) planned).plan();
    }

    @TestFactory
    @Tag("long")
    Stream<DynamicTest> everyCombination_isACarThatTheUsualRenewalsCanBePlannedOn() {
        return USUAL.keySet().stream().sorted().flatMap(sheet -> all(sheet).stream()
                .map(car -> DynamicTest.dynamicTest(car.said(), () -> check(car.overlay(), USUAL.get(sheet)))));
    }

    @TestFactory
    @Tag("long")
    Stream<DynamicTest> strutAndBrakeTogether_areACarWhateverIsAnswered() {
        Overlay seam = new Overlay(QuestionReader.stock("front-brake").seams().get("front-strut"));
        List<String> usual = List.of("complete-strut", "pads", "disc", "hub", "caliper-with-bracket");
        List<Answered> all = new ArrayList<>();
        for (Answered strut : all("front-strut")) {
            for (Answered brake : all("front-brake")) {
                Overlay car = Overlay.on("car-1", "Car", List.of("front-strut", "front-brake"))
                        .laid(seam.top())
                        .laid(strut.overlay().top().without("base"))
                        .laid(brake.overlay().top().without("base"));
                all.add(new Answered(car, strut.said() + " " + brake.said()));
            }
        }
        return all.stream().map(car -> DynamicTest.dynamicTest(car.said(), () -> check(car.overlay(), usual)));
    }

    private static void check(Overlay overlay, List<String> usual) {
        Assembly assembly = assembly(overlay);
        Set<String> there = new TreeSet<>();
        assembly.parts().forEach(part -> there.add(part.entry().id()));
        assembly.units().forEach(unit -> there.add(unit.entry().id()));
        for (String one : usual) {
            if (there.contains(one)) {
                Plan plan = plan(assembly, List.of(one));
                assertThat(plan.warnings()).as(one).isEmpty();
                assertThat(plan.selection().open()).as(one).isNotEmpty();
            }
        }
    }

    @Test
    void theFirstAnswerOfEach_changesNothing() {
        for (String sheet : USUAL.keySet()) {
            Overlay stock = Overlay.on("car-1", "Car", List.of(sheet));
            for (Question question : QuestionReader.stock(sheet).questions()) {
                assertThat(stock.answered(question, question.options().get(0).id()))
                        .isEqualTo(stock);
            }
        }
    }

    @Test
    void anotherLayout_leavesItsTorqueUnknown() {
        Overlay car = Overlay.on("car-1", "Car", List.of("front-strut"));
        Question top = QuestionReader.stock("front-strut").questions().stream()
                .filter(question -> question.id().equals("top"))
                .findFirst()
                .orElseThrow();
        String text = car.answered(top, "one-nut").write();
        assertThat(text).contains("torque: null").doesNotContain("N·m");
    }

    @Test
    void strutAndBrake_areOneCar_andTheirRenewalsOneJob() {
        Overlay car = Overlay.on("car-1", "Car", List.of("front-strut", "front-brake"));
        QuestionsRead.Sound brake = QuestionReader.stock("front-brake");
        Overlay joined = car.laid(brake.seams().get("front-strut"));
        Assembly assembly = assembly(joined);
        Plan together = plan(assembly, List.of("complete-strut", "pads"));
        Minutes alone = plan(assembly, List.of("complete-strut"))
                .total()
                .plus(plan(assembly, List.of("pads")).total());
        assertThat(together.total()).isLessThan(alone);
        assertThat(together.selection().open().stream()
                        .filter(joint -> assembly.joints().get(joint).id().equals("left.wheel-nuts")))
                .hasSize(1);
        assertThat(assembly.joints().stream().map(joint -> joint.entry().id())).doesNotContain("pin-upper");
    }

    @Test
    void faultsOfAFile_areToldWithLineAndColumn() {
        QuestionsRead read = QuestionReader.text("q.yaml", """
                questions:
                  top:
                    aks: What?
                    options:
                      One: {label: One, picture: x}
                      two: {label: Two, picture: x, says: {joints: {nut: {torqe: 5 N.m}}}}
                """);
        assertThat(((QuestionsRead.Faulty) read).faults().toString())
                .contains("q.yaml:3:5: aks is not a key of question top; maybe ask")
                .contains("q.yaml:2:3: question top has no ask")
                .contains("q.yaml:5:7: \"One\" cannot be an id")
                .contains("q.yaml:6:59: torqe is not a key of nut; maybe torque");
    }

    @Test
    void oneOptionIsNoChoice_andTheFirstSaysNothing() {
        QuestionsRead read = QuestionReader.text("q.yaml", """
                questions:
                  top: {ask: What?, options: {one: {label: One, picture: x, says: {parts: {a: null}}}}}
                """);
        assertThat(((QuestionsRead.Faulty) read).faults().toString())
                .contains("there are 1; give two or three")
                .contains("the first is what the stock sheet describes");
    }
}
