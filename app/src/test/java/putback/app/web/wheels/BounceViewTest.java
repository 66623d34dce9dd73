package putback.app.web.wheels;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import putback.app.text.BounceReport;

class BounceViewTest {
    private static BounceView.Sent record(double ratio) {
        StringBuilder rows = new StringBuilder("time,height\n");
        for (int i = 0; i < 300; i++) {
            double t = i / 100.0;
            double height = -40 * Math.exp(-ratio * 2 * Math.PI * 1.4 * t) * Math.cos(2 * Math.PI * 1.4 * t);
            rows.append(String.format(Locale.ROOT, "%.2f,%.4f%n", t, height));
        }
        return sent(rows.toString());
    }

    private static BounceView.Sent sent(String text) {
        return new BounceView.Sent("phone.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static BounceReport report(boolean inTime, BounceView.Sent... sent) {
        return Objects.requireNonNull(BounceView.of(List.of(sent), inTime).report());
    }

    @Test
    void oneRecord_asksForTheOther() {
        assertThat(report(false, record(0.25)).verdict()).contains("record the other side");
    }

    @Test
    void leftAndRight_nameTheSideThatIsDampedLess() {
        assertThat(report(false, record(0.3), record(0.1)).verdict()).startsWith("The right side is damped less: ");
        assertThat(report(false, record(0.2), record(0.2)).verdict()).isEqualTo("Both sides are damped much alike.");
    }

    @Test
    void beforeAndAfter_sayWhatTheJobDid() {
        assertThat(report(true, record(0.1), record(0.3)).verdict()).startsWith("After the job it is damped more: ");
        assertThat(report(true, record(0.3), record(0.1)).verdict()).contains("damped less", "Look over what was done");
        assertThat(report(true, record(0.3), record(0.1)).names()).containsExactly("before", "after");
    }

    @Test
    void aWrongFile_isToldInTenLinesAndACount_andNoFileInOne() {
        BounceView view = BounceView.of(List.of(sent("#!/bin/sh\n" + "echo a b c\n".repeat(200))), false);
        assertThat(view.report()).isNull();
        assertThat(view.faults()).hasSize(11);
        assertThat(view.faults().get(0)).startsWith("phone.csv:");
        assertThat(view.faults().get(10)).contains("more like these", "right file");
        assertThat(BounceView.of(List.of(), false).faults()).hasSize(1);
        assertThat(BounceView.of(List.of(new BounceView.Sent("x", new byte[] {0, 1, 2})), false)
                        .faults())
                .singleElement()
                .asString()
                .contains("not text");
    }

    @Test
    void aBush_takesBareMillimetres_andSaysWhatIsWrongAtItsField() {
        BushView view = BushView.of(Map.of("arm", "350", "ride", "-15", "tightened", "-100 mm"));
        assertThat(Objects.requireNonNull(view.answer()).windUp().degrees()).isBetween(14.14, 14.15);
        assertThat(BushView.of(Map.of("arm", "long", "ride", "-15", "tightened", "-100"))
                        .wrong("arm"))
                .contains("long");
        assertThat(BushView.of(Map.of("arm", "350")).wrong()).isEmpty();
        assertThat(BushView.of(Map.of("arm", "50", "ride", "-15", "tightened", "-100"))
                        .wrong())
                .singleElement()
                .satisfies(one -> assertThat(one.said()).contains("cannot have its outer end"));
    }
}
