package putback.app.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.app.fixtures.Plans;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.WantedNames;
import putback.sheet.Side;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

@SuppressWarnings("unchecked")
class PlanJsonTest {
    private static final List<String> LISTS_OF_STRINGS =
            List.of("renew", "open", "off", "hung", "aside", "followUps", "advice", "warnings");

    private static Plan plan(String sheet, String renew) {
        Read.Sheet read = (Read.Sheet) SheetReader.open(sheet);
        WantedNames.Understood.Clear clear = (WantedNames.Understood.Clear)
                WantedNames.understand(read.assembly(), List.of(renew), Set.of(Side.LEFT, Side.RIGHT));
        return ((Planned.Sound) Planner.plan(read.assembly(), clear.wanted())).plan();
    }

    private static Map<String, Object> object(Object value) {
        return (Map<String, Object>) value;
    }

    private static List<Object> list(Object value) {
        return (List<Object>) value;
    }

    @ParameterizedTest
    @CsvSource({"front-strut,complete-strut", "front-strut,strut", "twist-beam,spring", "front-brake,disc"})
    void everyKey_hasItsType(String sheet, String renew) {
        String text = PlanJson.of(plan(sheet, renew), null);
        assertThat(text).matches("[\\x20-\\x7e]*");
        Map<String, Object> json = object(JsonTree.read(text));
        assertThat(json.get("sheet")).isEqualTo(sheet);
        for (String key : LISTS_OF_STRINGS) {
            assertThat(list(json.get(key))).as(key).allMatch(item -> item instanceof String);
        }
        assertThat(object(json.get("minutes"))).containsOnlyKeys("work", "setup", "total");
        for (Object figure : object(json.get("minutes")).values()) {
            assertThat(figure).isInstanceOf(BigDecimal.class);
        }
        assertThat(json.get("proven")).isInstanceOf(Boolean.class);
        assertThat(json.get("bound")).isInstanceOf(BigDecimal.class);
        for (Object step : list(json.get("steps"))) {
            stepHasItsTypes(object(step));
        }
        for (Object tool : list(json.get("tools"))) {
            assertThat(object(tool)).containsOnlyKeys("tool", "steps");
            assertThat(list(object(tool).get("steps"))).isNotEmpty().allMatch(n -> n instanceof BigDecimal);
        }
        for (Object need : list(json.get("parts"))) {
            assertThat(object(need)).containsOnlyKeys("part", "name", "count", "price", "reason");
            assertThat(object(need).get("count")).isInstanceOf(BigDecimal.class);
            assertThat(object(need).get("price"))
                    .satisfiesAnyOf(price -> assertThat(price).isNull(), price -> assertThat((String) price)
                            .matches("\\d+(\\.\\d+)?"));
        }
    }

    private static void stepHasItsTypes(Map<String, Object> step) {
        assertThat(step.get("n")).isInstanceOf(BigDecimal.class);
        for (String key : List.of("do", "height", "text", "phase")) {
            assertThat(step.get(key)).as(key).isInstanceOf(String.class);
        }
        for (String key : List.of("minutes", "setup")) {
            assertThat(step.get(key)).as(key).isInstanceOf(BigDecimal.class);
        }
        for (String key : List.of("why", "cautions", "with", "stages")) {
            assertThat(list(step.get(key))).as(key).allMatch(item -> item instanceof String);
        }
        for (String key : List.of("joint", "part", "station", "tool", "hold", "aid", "followUp", "torqueSource")) {
            assertThat(step).containsKey(key);
            assertThat(step.get(key))
                    .as(key)
                    .satisfiesAnyOf(value -> assertThat(value).isNull(), value -> assertThat((String) value)
                            .isNotEmpty());
        }
        for (String key : List.of("torqueNm", "angleDeg")) {
            assertThat(step).containsKey(key);
            assertThat(step.get(key) == null || step.get("do").equals("tighten"))
                    .isTrue();
        }
        assertThat(step.get("side")).isIn(null, "left", "right");
    }

    @Test
    void figures_addUpExactly() {
        Map<String, Object> json = object(JsonTree.read(PlanJson.of(plan("front-strut", "complete-strut"), null)));
        Map<String, Object> minutes = object(json.get("minutes"));
        BigDecimal work = BigDecimal.ZERO;
        BigDecimal setup = BigDecimal.ZERO;
        for (Object step : list(json.get("steps"))) {
            work = work.add((BigDecimal) object(step).get("minutes"));
            setup = setup.add((BigDecimal) object(step).get("setup"));
        }
        assertThat(work).isEqualByComparingTo((BigDecimal) minutes.get("work"));
        assertThat(setup).isEqualByComparingTo((BigDecimal) minutes.get("setup"));
        assertThat(work.add(setup)).isEqualByComparingTo((BigDecimal) minutes.get("total"));
        BigDecimal sequence = (BigDecimal) object(json.get("sequence")).get("setup");
        assertThat(work.add(sequence)).isEqualByComparingTo((BigDecimal) json.get("objective"));
    }

    @Test
    void everyOpenedJoint_isUndoneAndStartedOnce() {
        Map<String, Object> json = object(JsonTree.read(PlanJson.of(plan("twist-beam", "spring"), null)));
        List<Object> undone = new ArrayList<>();
        List<Object> started = new ArrayList<>();
        for (Object step : list(json.get("steps"))) {
            if (object(step).get("do").equals("undo")) {
                undone.add(object(step).get("joint"));
            } else if (object(step).get("do").equals("start")) {
                started.add(object(step).get("joint"));
            }
        }
        assertThat(undone).containsExactlyInAnyOrderElementsOf(list(json.get("open")));
        assertThat(started).containsExactlyInAnyOrderElementsOf(list(json.get("open")));
    }

    @Test
    void awkwardNames_readBack() {
        Map<String, Object> json = object(JsonTree.read(PlanJson.of(Plans.awkwardNames(), null)));
        assertThat(object(list(json.get("parts")).get(0)).get("name").toString())
                .contains("& <washer> \"of\"");
    }
}
