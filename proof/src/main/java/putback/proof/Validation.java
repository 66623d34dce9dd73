package putback.proof;

import java.util.List;

/** The cases as the page docs/validation.md. */
public final class Validation {
    private Validation() {}

    /** The same cases give the same text, byte for byte. */
    public static String markdown(List<Case> cases) {
        StringBuilder page = new StringBuilder("""
                # Validation

                Written by the program from its own run of `putback proof`; `./check` fails when it is stale. Each row holds a figure of an outside source
                against ours. "Computed independently" means that no figure is published: another method, outside this program, gave it.
                """);
        String source = "";
        for (Case one : cases) {
            if (!one.source().equals(source)) {
                source = one.source();
                page.append("\n## ")
                        .append(source)
                        .append(
                                "\n\n| at | quantity | theirs | ours | difference | allowed | because | verdict |\n|---|---|---|---|---|---|---|---|\n");
            }
            page.append("| ").append(String.join(" | ", cells(one))).append(" |\n");
        }
        return page.append("\n")
                .append(count(cases, Verdict.AGREES))
                .append(" of ")
                .append(cases.size())
                .append(" agree, ")
                .append(count(cases, Verdict.KNOWN))
                .append(" in known disagreement, ")
                .append(count(cases, Verdict.DISAGREES))
                .append(" in disagreement without an explanation.\n")
                .toString();
    }

    private static long count(List<Case> cases, Verdict verdict) {
        return cases.stream().filter(one -> one.verdict() == verdict).count();
    }

    private static List<String> cells(Case one) {
        return List.of(
                one.at(),
                one.quantity(),
                one.expected().toPlainString(),
                one.ours().toPlainString(),
                one.difference().toPlainString(),
                one.allowed().toPlainString(),
                one.because(),
                one.verdict().word());
    }
}
