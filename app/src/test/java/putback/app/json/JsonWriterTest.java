package putback.app.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonWriterTest {
    private final JsonWriter json = new JsonWriter(16);

    @Test
    void everyLetter_isAsciiAndReadsBack() {
        StringBuilder all = new StringBuilder("\"\\/\b\f\n\r\t");
        for (int c = 0; c < 0x3000; c++) {
            all.appendCodePoint(c);
        }
        all.appendCodePoint(0x1f527);
        String written = json.value(all.toString()).toString();
        assertThat(written).matches("[\\x20-\\x7e]*");
        assertThat(JsonTree.read(written)).isEqualTo(all.toString());
    }

    @Test
    void commas_standBetweenAndNowhereElse() {
        json.beginObject()
                .key("a")
                .beginArray()
                .endArray()
                .key("b")
                .beginArray()
                .value(1)
                .value(2)
                .beginObject();
        json.endObject()
                .endArray()
                .key("c")
                .value((String) null)
                .key("d")
                .strings(List.of("x", "y"))
                .endObject();
        assertThat(json).hasToString("{\"a\":[],\"b\":[1,2,{}],\"c\":null,\"d\":[\"x\",\"y\"]}");
    }

    @Test
    void decimals_areExactAndPlain() {
        json.beginArray()
                .value(new BigDecimal("0.1"))
                .value(new BigDecimal("1E+3"))
                .value(new BigDecimal("1E-7"));
        assertThat(json.endArray()).hasToString("[0.1,1000,0.0000001]");
    }

    @Test
    void numbers_readBackAsThemselves() {
        json.beginArray()
                .number(98.0)
                .number(0.1 + 0.2)
                .number(1e22)
                .number(null)
                .number(Double.NaN)
                .endArray();
        assertThat(json).hasToString("[98,0.30000000000000004,1.0E22,null,null]");
        assertThat(JsonTree.read(json.toString()))
                .isEqualTo(Arrays.asList(
                        new BigDecimal("98"),
                        new BigDecimal("0.30000000000000004"),
                        new BigDecimal("1.0E22"),
                        null,
                        null));
    }

    @Test
    void object_readsBackInOrder() {
        String text = json.beginObject()
                .key("b")
                .value(true)
                .key("a")
                .value(false)
                .endObject()
                .toString();
        assertThat(JsonTree.read(text)).isEqualTo(Map.of("b", true, "a", false));
    }
}
