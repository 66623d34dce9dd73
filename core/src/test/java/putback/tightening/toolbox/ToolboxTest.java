package putback.tightening.toolbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.quantity.Length;
import putback.quantity.Torque;

class ToolboxTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 2);
    private static final Upkeep FRESH = new Upkeep(LocalDate.of(2026, 3, 9), 100, null);
    private static final Length HALF_INCH = new Length(12.7);

    private static TorqueWrench wrench(String id, double low, double high, double step, Upkeep upkeep) {
        return new TorqueWrench(
                id,
                "",
                new Torque(low),
                new Torque(high),
                new Torque(step),
                0.04,
                true,
                HALF_INCH,
                null,
                false,
                false,
                upkeep);
    }

    private static Toolbox toolbox(TorqueWrench... wrenches) {
        Owned socket = new Owned(new Tool(ToolForm.SOCKET, new Length(18)), HALF_INCH, null);
        Kept strap = new Kept("strap", 1, "500 kg", "");
        return new Toolbox("t", "t", Interval.DEFAULT, List.of(socket), List.of(), List.of(strap), List.of(wrenches));
    }

    private static Task task(double torque) {
        return new Task(
                "18 mm socket",
                new Torque(torque),
                new Torque(0.9 * torque),
                new Torque(1.1 * torque),
                false,
                false,
                false);
    }

    private static Tightened chosen(Task task, TorqueWrench... wrenches) {
        return new WrenchChoice(toolbox(wrenches), TODAY).of(task);
    }

    /** Interval of ISO 6789 (2003), as calibration houses quote it: 12 months or 5000 operations, and after a drop. */
    @Test
    void wrench_isDue_onTheDayTheYearEnds_atTheFiveThousandth_andAfterADrop() {
        LocalDate last = LocalDate.of(2025, 11, 3);
        assertThat(new Upkeep(last, 4999, null).due(TODAY, Interval.DEFAULT)).isEmpty();
        assertThat(new Upkeep(last, 4999, null).due(TODAY.plusDays(1), Interval.DEFAULT))
                .containsExactly("last calibrated 2025-11-03, more than 12 months ago");
        assertThat(new Upkeep(last, 5000, null).due(TODAY, Interval.DEFAULT)).hasSize(1);
        assertThat(new Upkeep(last, 0, last).due(TODAY, Interval.DEFAULT)).containsExactly("dropped 2025-11-03");
        assertThat(new Upkeep(last, 0, last.minusDays(1)).due(TODAY, Interval.DEFAULT))
                .isEmpty();
        assertThat(new Upkeep(null, 0, null).due(TODAY, Interval.DEFAULT)).containsExactly("no calibration on record");
        assertThat(new Upkeep(TODAY.plusDays(1), 0, null).due(TODAY, Interval.DEFAULT))
                .hasSize(1);
    }

    @Test
    void leapDay_isAYearLater_theLastOfFebruary() {
        Upkeep upkeep = new Upkeep(LocalDate.of(2024, 2, 29), 0, null);
        assertThat(upkeep.due(LocalDate.of(2025, 2, 27), Interval.DEFAULT)).isEmpty();
        assertThat(upkeep.due(LocalDate.of(2025, 2, 28), Interval.DEFAULT)).hasSize(1);
    }

    @Test
    void choice_prefersTheMiddleOfTheScale_andTheSettingIsAMark() {
        Tightened tightened = chosen(task(95), wrench("A", 20, 100, 1, FRESH), wrench("B", 40, 200, 2, FRESH));
        assertThat(tightened).isInstanceOfSatisfying(Tightened.With.class, with -> {
            assertThat(with.wrench().id()).isEqualTo("B");
            assertThat(with.setting().newtonMetres()).isEqualTo(94);
            assertThat(with.due()).isEmpty();
        });
    }

    @Test
    void wrenchThatIsDue_isTakenOnlyWhereNoOtherCovers_andThenSaysSo() {
        Upkeep dropped = new Upkeep(LocalDate.of(2026, 3, 9), 10, LocalDate.of(2026, 8, 1));
        TorqueWrench due = wrench("B", 40, 200, 2, dropped);
        assertThat(chosen(task(95), due, wrench("A", 20, 100, 1, FRESH)))
                .isInstanceOfSatisfying(
                        Tightened.With.class,
                        with -> assertThat(with.wrench().id()).isEqualTo("A"));
        assertThat(chosen(task(150), due, wrench("A", 20, 100, 1, FRESH)))
                .isInstanceOfSatisfying(
                        Tightened.With.class, with -> assertThat(with.due()).containsExactly("dropped 2026-08-01"));
    }

    @Test
    void noWrench_isSaidInWords_andNeverAFigure() {
        assertThat(chosen(task(250), wrench("B", 40, 200, 2, FRESH)))
                .isEqualTo(
                        new Tightened.Untorqued("no wrench is marked for 250 N·m (184 lbf·ft); the nearest is B, 40 to"
                                + " 200 N·m (30 to 148 lbf·ft)"));
        assertThat(chosen(task(95))).isEqualTo(new Tightened.Untorqued("the toolbox has no torque wrench"));
        assertThat(new WrenchChoice(toolbox(wrench("B", 40, 200, 2, FRESH)), TODAY)
                        .of(new Task(
                                "21 mm socket", new Torque(90), new Torque(80), new Torque(99), false, false, false)))
                .isEqualTo(new Tightened.Untorqued(
                        "there is nothing to put on a torque wrench in place of the 21 mm socket"));
    }

    @Test
    void leftHandedFastener_needsAWrenchThatMeasuresTurningLeft() {
        Task left = new Task("18 mm socket", new Torque(95), new Torque(86), new Torque(104), false, false, true);
        assertThat(chosen(left, wrench("B", 40, 200, 2, FRESH)))
                .isInstanceOfSatisfying(Tightened.Untorqued.class, none -> assertThat(none.because())
                        .endsWith("measures turning left"));
    }

    @Test
    void limitsNarrowerThanTheDeviation_areRefusedAndNamed() {
        Task narrow = new Task("18 mm socket", new Torque(95), new Torque(94), new Torque(96), false, false, false);
        assertThat(chosen(narrow, wrench("B", 40, 200, 1, FRESH)))
                .isInstanceOfSatisfying(Tightened.Untorqued.class, none -> assertThat(none.because())
                        .startsWith("B: a wrench with a deviation of 4 %"));
    }

    @Test
    void anySetting_liesInTheWrench_inItsWindow_andOnAMark() {
        for (int seed = 0; seed < 3000; seed++) {
            Random random = new Random(seed);
            double low = 1 + random.nextInt(60);
            double step = new double[] {0.5, 1, 2, 5, 10}[random.nextInt(5)];
            TorqueWrench one = wrench("A", low, low + 1 + random.nextInt(300), step, FRESH);
            TorqueWrench two = wrench("B", low * 2, low * 2 + 1 + random.nextInt(300), step, FRESH);
            double torque = 1 + random.nextInt(400);
            if (!(chosen(task(torque), one, two) instanceof Tightened.With with)) {
                continue;
            }
            String because = "seed " + seed;
            double setting = with.setting().newtonMetres();
            assertThat(with.wrench().covers(with.setting())).as(because).isTrue();
            assertThat(Math.abs(setting / step - Math.rint(setting / step)))
                    .as(because)
                    .isLessThan(1e-9);
            assertThat(setting / 1.04).as(because).isGreaterThanOrEqualTo(0.9 * torque - 1e-9);
            assertThat(setting / 0.96).as(because).isLessThanOrEqualTo(1.1 * torque + 1e-9);
        }
    }

    @Test
    void toolOfAnotherSystem_isOfferedOnlyWhereItDoesNotRound() {
        Toolbox inch = new Toolbox(
                "t",
                "t",
                Interval.DEFAULT,
                List.of(
                        new Owned(new Tool(ToolForm.SOCKET, new Length(19.05)), null, null),
                        new Owned(new Tool(ToolForm.SOCKET, new Length(14.2875)), null, null)),
                List.of(),
                List.of(),
                List.of());
        assertThat(Have.tool(inch, "19 mm socket"))
                .isEqualTo(new Have(Have.State.INSTEAD, "the 3/4 in socket fits too"));
        assertThat(Have.tool(inch, "14 mm socket").state()).isEqualTo(Have.State.MISSING);
    }

    @Test
    void aids_areCounted() {
        Toolbox toolbox = toolbox();
        assertThat(Have.aid(toolbox, "strap", 1)).isEqualTo(new Have(Have.State.THERE, "rated 500 kg"));
        assertThat(Have.aid(toolbox, "strap", 2)).isEqualTo(new Have(Have.State.MISSING, "there is only 1"));
        assertThat(Have.aid(toolbox, "jack", 1).state()).isEqualTo(Have.State.MISSING);
    }

    @Test
    void keyThroughTheMiddle_isWarnedOf_whereNoSocketIsOpenAbove() {
        Task keyed = new Task("18 mm socket", new Torque(95), new Torque(86), new Torque(104), false, true, false);
        assertThat(chosen(keyed, wrench("B", 40, 200, 1, FRESH)))
                .isInstanceOfSatisfying(Tightened.With.class, with -> assertThat(with.remarks())
                        .anySatisfy(remark -> assertThat(remark).contains("covers the key")));
    }

    @Test
    void toolWithoutASize_isTakenToGoOnAnyWrench() {
        Task bit = new Task("T30 bit", new Torque(95), new Torque(86), new Torque(104), false, false, false);
        assertThat(chosen(bit, wrench("B", 40, 200, 1, FRESH)))
                .isInstanceOfSatisfying(
                        Tightened.With.class, with -> assertThat(with.remarks()).isEmpty());
    }
}
