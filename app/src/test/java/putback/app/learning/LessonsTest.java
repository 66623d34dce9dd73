package putback.app.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.labour.price.Observed;
import putback.labour.price.Observed.Rusted;
import putback.labour.price.Observed.Took;
import putback.labour.price.Observed.Tried;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.ledger.Did;
import putback.sheet.Assembly;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** What a ledger teaches, rule by rule. The joints are those of the stock sheet of a twist beam. */
class LessonsTest {
    private static final Assembly CAR = ((Read.Sheet) SheetReader.stock("twist-beam")).assembly();
    private static final String BOLT = "left.damper-lower";
    private static final String OTHER = "right.damper-lower";
    private static final RustGrades SCALED = RustGrades.all(RustGrade.SCALED);

    /** With a first event, since nobody says when the first step began. */
    private static Written at() {
        return new Written().did(0, Did.HEIGHT, null);
    }

    private static List<Observed> taught(Written written) {
        return Lessons.of(written.events(), CAR, null);
    }

    @Test
    void minutes_areTheTimeSinceTheSamePersonsLastEvent_andBothSidesTeachTheSame() {
        assertThat(taught(
                        at().did(2.5, Did.UNDO, BOLT).did(4, Did.TAKE_OFF, null).did(7.25, Did.UNDO, OTHER)))
                .containsExactly(new Took("damper-lower", true, 2.5), new Took("damper-lower", true, 3.25));
    }

    @Test
    void breakingLooseAndUndoing_areOneOpening_andStartRunDownAndTighteningOneClosing() {
        Written job = at().did(1, Did.BREAK_LOOSE, BOLT)
                .did(5, Did.SUPPORT, null)
                .did(7, Did.UNDO, BOLT)
                .did(9, Did.RENEW, null)
                .did(10, Did.START, BOLT)
                .did(12, Did.RUN_DOWN, BOLT)
                .did(20, Did.HEIGHT, null)
                .did(24, Did.TIGHTEN, BOLT);
        assertThat(taught(job)).containsExactly(new Took("damper-lower", true, 3), new Took("damper-lower", false, 7));
    }

    @Test
    void theFirstStepOfAPerson_teachesNothing_sinceNobodySaysWhenItBegan() {
        assertThat(taught(new Written().did(9, Did.UNDO, BOLT))).isEmpty();
    }

    @Test
    void whatIsNotTightYet_wasNotClosed() {
        assertThat(taught(at().did(2, Did.UNDO, BOLT).did(3, Did.START, BOLT).did(4, Did.RUN_DOWN, BOLT)))
                .containsExactly(new Took("damper-lower", true, 2));
    }

    @Test
    void anInterruption_isTakenOut_andANoteIsPartOfItsStep() {
        Written job = at().note(2, BOLT, "Interrupted: telephone")
                .note(17, BOLT, "Went on")
                .note(18, BOLT, "Found, soon: hose cracked")
                .did(21, Did.UNDO, BOLT);
        assertThat(taught(job)).containsExactly(new Took("damper-lower", true, 6));
    }

    @Test
    void anInterruptionOfWhichNobodySaysWhenItEnded_leavesTheMinutesUnknown() {
        Written job = at().note(2, BOLT, "Interrupted: telephone")
                .did(17, Did.UNDO, BOLT)
                .did(20, Did.UNDO, OTHER);
        assertThat(taught(job)).containsExactly(new Took("damper-lower", true, 3));
    }

    @Test
    void stepsWrittenTogether_teachNothingOfTheirMinutes_norThatNothingWasSeized() {
        Written job = at().did(20, Did.UNDO, BOLT).did(20, Did.TAKE_OFF, null).did(20.05, Did.UNDO, OTHER);
        assertThat(Lessons.of(job.events(), CAR, SCALED)).isEmpty();
    }

    @Test
    void aNewFastenerAndANote_areWrittenWithTheirStep_andDoNotSpoilIt() {
        Written job = at().did(2, Did.UNDO, BOLT)
                .did(4, Did.REPLACE_FASTENER, BOLT)
                .did(4, Did.START, BOLT)
                .did(7, Did.TIGHTEN, BOLT)
                .note(7, BOLT, "Looked up: 70 N·m; handbook p. 4");
        assertThat(taught(job)).contains(new Took("damper-lower", false, 5));
    }

    @Test
    void aGapOfMoreThanHalfAnHour_teachesNothing() {
        assertThat(taught(at().did(30, Did.UNDO, BOLT).did(60.1, Did.UNDO, OTHER)))
                .containsExactly(new Took("damper-lower", true, 30));
    }

    @Test
    void whatWasCorrected_doesNotCount_andTheTimeGoesOn() {
        Written job = at().did(1, Did.UNDO, BOLT);
        job.wrong(2, job.last()).did(5, Did.UNDO, BOLT);
        assertThat(taught(job)).containsExactly(new Took("damper-lower", true, 5));
    }

    @Test
    void twoPeopleAtOneCar_haveTheirOwnTime() {
        Written job = at().by("Teo", "phone")
                .did(1, Did.HEIGHT, null)
                .did(4, Did.UNDO, OTHER)
                .by("Mara", "tab")
                .did(6, Did.UNDO, BOLT);
        assertThat(taught(job)).containsExactly(new Took("damper-lower", true, 6), new Took("damper-lower", true, 3));
    }

    @Test
    void fromOneDeviceToAnother_noTimeIsTaken() {
        Written job = at().by("Mara", "phone").did(3, Did.UNDO, BOLT).did(5, Did.UNDO, OTHER);
        assertThat(taught(job)).containsExactly(new Took("damper-lower", true, 2));
    }

    @Test
    void aClockThatGoesBack_teachesNothing() {
        assertThat(taught(at().did(-3, Did.UNDO, BOLT))).isEmpty();
    }

    @Test
    void onlyTheFirstRoundOfAJoint_teaches() {
        Written job = at().did(2, Did.UNDO, BOLT)
                .did(3, Did.START, BOLT)
                .did(6, Did.UNDO, BOLT)
                .did(7, Did.START, BOLT)
                .did(8, Did.TIGHTEN, BOLT);
        assertThat(taught(job)).containsExactly(new Took("damper-lower", true, 2));
    }

    @Test
    void whatBroke_leavesTheMinutesUnknown() {
        Written job = at().did(2, Did.BREAK, BOLT).did(9, Did.UNDO, BOLT).did(12, Did.UNDO, OTHER);
        assertThat(taught(job)).containsExactly(new Took("damper-lower", true, 3));
    }

    @Test
    void triesHaveTheirOwnMinutes_whichAreNotThoseOfTheOpening() {
        Written job = at().note(2, BOLT, "Will not move (stuck)")
                .note(5, BOLT, "Will not move (stuck): tried penetrant, no")
                .note(12, BOLT, "Will not move (stuck): tried heat, yes")
                .did(13, Did.UNDO, BOLT);
        assertThat(Lessons.of(job.events(), CAR, SCALED))
                .containsExactly(
                        new Took("damper-lower", true, 3),
                        new Rusted("damper-lower", RustGrade.SCALED, 1, 1),
                        new Tried("penetrant", false, 3),
                        new Tried("heat", true, 7));
    }

    @Test
    void aFastenerThatJustComesUndone_isCountedAtItsOwnGrade() {
        RustGrades grades =
                ((putback.quantity.Parsed.Value<RustGrades>) RustGrades.read(CAR, List.of("1", "left=3"))).value();
        Written job = at().did(2, Did.UNDO, BOLT).did(4, Did.UNDO, OTHER);
        assertThat(Lessons.of(job.events(), CAR, grades))
                .contains(
                        new Rusted("damper-lower", RustGrade.SWOLLEN, 0, 1),
                        new Rusted("damper-lower", RustGrade.SURFACE, 0, 1));
    }

    @Test
    void aPressAlone_withoutATry_isNotYetASeizedFastener() {
        Written job = at().note(2, BOLT, "Will not move (stuck)").did(3, Did.UNDO, BOLT);
        assertThat(Lessons.of(job.events(), CAR, SCALED))
                .containsExactly(new Rusted("damper-lower", RustGrade.SCALED, 0, 1));
    }

    @Test
    void whatMovedByItself_wasSeized_andTeachesNoResort() {
        Written job = at().note(2, BOLT, "Will not move (spins)")
                .note(9, BOLT, "Moved (spins)")
                .did(10, Did.UNDO, BOLT);
        assertThat(Lessons.of(job.events(), CAR, SCALED))
                .containsExactly(new Took("damper-lower", true, 3), new Rusted("damper-lower", RustGrade.SCALED, 1, 1));
    }

    @Test
    void noMoreFastenersAreSeized_thanThereAre() {
        Written job = at();
        for (int i = 1; i <= 3; i++) {
            job.note(i * 5, BOLT, "Will not move (stuck)")
                    .note(i * 5 + 2, BOLT, "Will not move (stuck): tried penetrant, yes");
        }
        assertThat(Lessons.of(job.did(20, Did.UNDO, BOLT).events(), CAR, SCALED))
                .contains(new Rusted("damper-lower", RustGrade.SCALED, 1, 1));
    }

    @Test
    void triesWrittenOneAfterTheOtherAtOnce_countWithoutMinutes() {
        Written job = at().note(2, BOLT, "Will not move (stuck)")
                .note(9, BOLT, "Will not move (stuck): tried penetrant, no")
                .note(9.05, BOLT, "Will not move (stuck): tried heat, yes");
        assertThat(taught(job)).containsExactly(new Tried("penetrant", false, 0), new Tried("heat", true, 0));
    }

    @Test
    void aTryWhoseBeginningIsNotWritten_countsWithoutMinutes_andSpoilsTheOpening() {
        Written job =
                at().note(9, BOLT, "Will not move (stuck): tried heat, yes").did(10, Did.UNDO, BOLT);
        assertThat(taught(job)).containsExactly(new Tried("heat", true, 0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"will it move?", "Will not move", "Will not move (stuck): tried heat", "Moved the jack"})
    void otherNotes_areNoTries(String words) {
        Written job = at().note(1, BOLT, words).did(2, Did.UNDO, BOLT);
        assertThat(Lessons.of(job.events(), CAR, SCALED))
                .containsExactly(new Took("damper-lower", true, 2), new Rusted("damper-lower", RustGrade.SCALED, 0, 1));
    }

    @Test
    void whatIsNotOfThisCar_isLeftAside() {
        assertThat(taught(at().did(2, Did.UNDO, "left.strut-to-hub").did(4, Did.UNDO, "nothing")))
                .isEmpty();
    }
}
