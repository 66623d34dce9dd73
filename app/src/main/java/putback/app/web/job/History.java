package putback.app.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.text.Headline;
import putback.plan.Plan;
import putback.store.books.Scope;

/** What a change of a job's work and terms is called in its history. */
final class History {
    private static final Map<String, String> TERMS = Map.of(
            "rate", "an hour’s work",
            "tax", "tax in percent",
            "tax-on", "tax rounded on the",
            "markup", "markup in percent",
            "sundries", "sundries",
            "subcontracted", "work of others",
            "ceiling", "ask for a yes up to");

    private History() {}

    /**
     * The scope in words.
     *
     * @param plan null where there is none
     */
    static String said(Scope scope, @Nullable Plan plan) {
        List<String> said = new ArrayList<>();
        said.add(plan == null ? "no plan for what is named" : Headline.renewed(plan));
        if (!scope.rust().isEmpty()) {
            said.add("rust: "
                    + Rust.said(
                            scope, plan == null ? List.of() : plan.assembly().joints()));
        }
        for (String pair : scope.terms().split("&", -1)) {
            int equals = pair.indexOf('=');
            String name = equals < 0 ? null : TERMS.get(pair.substring(0, equals));
            if (name != null) {
                said.add(name + " " + pair.substring(equals + 1));
            }
        }
        return String.join("; ", said);
    }
}
