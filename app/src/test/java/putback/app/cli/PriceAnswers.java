package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import putback.app.json.JsonTree;

/** What {@code putback price --json} answers. */
@SuppressWarnings("unchecked")
final class PriceAnswers {
    private PriceAnswers() {}

    static Map<String, Object> json(String... words) {
        Said said = Said.by(words);
        assertThat(said.err()).isEmpty();
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out()).matches("\\p{ASCII}*");
        return (Map<String, Object>) JsonTree.read(said.out().strip());
    }

    static List<Map<String, Object>> list(Map<String, Object> answer, String key) {
        return (List<Map<String, Object>>) answer.get(key);
    }

    static double time(Map<String, Object> answer, String key) {
        return ((BigDecimal) ((Map<String, Object>) answer.get("time")).get(key)).doubleValue();
    }

    static BigDecimal money(Map<String, Object> answer, String key) {
        return new BigDecimal(String.valueOf(answer.get(key)));
    }
}
