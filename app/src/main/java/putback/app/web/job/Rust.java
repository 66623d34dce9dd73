package putback.app.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import putback.plan.Plan;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.store.books.Scope;

/** How rusty a job's car is, as its book keeps it: {@code 2,left=3,left.strut-to-hub=4}. */
final class Rust {
    private static final List<String> GRADES = List.of("clean", "surface", "scaled", "swollen", "wasted");

    private Rust() {}

    /** Each grade as it is kept; what another sheet called otherwise is left out, since nobody means it any more. */
    static List<String> words(Scope scope, Plan plan) {
        Set<String> known = new TreeSet<>();
        for (Joint joint : plan.assembly().joints()) {
            known.add(joint.id());
            known.add(joint.entry().id());
            if (joint.side() != Side.NONE) {
                known.add(joint.side().word());
            }
        }
        List<String> words = new ArrayList<>();
        for (String word : scope.rust().split(",", -1)) {
            int equals = word.indexOf('=');
            if (!word.isBlank()
                    && (equals < 0 || known.contains(word.substring(0, equals).strip()))) {
                words.add(word.strip());
            }
        }
        return words.isEmpty() ? List.of("0") : words;
    }

    /** By what it is about: nothing for the whole car, a side, a fixing. */
    static Map<String, String> byPlace(Scope scope) {
        Map<String, String> grades = new TreeMap<>();
        for (String word : scope.rust().split(",", -1)) {
            int equals = word.indexOf('=');
            if (!word.isBlank()) {
                grades.put(
                        equals < 0 ? "" : word.substring(0, equals).strip(),
                        word.substring(equals + 1).strip());
            }
        }
        return grades;
    }

    /** The grade with its word: {@code 2 scaled}. */
    static String said(String grade) {
        return grade.matches("[0-4]") ? grade + " " + GRADES.get(grade.charAt(0) - '0') : grade;
    }

    /** All of it in words, fixings by their names; the whole car alone where there is no plan. */
    static String said(Scope scope, List<Joint> joints) {
        Map<String, String> grades = byPlace(scope);
        String usual = grades.get("");
        List<String> said = new ArrayList<>();
        said.add("the whole car " + said(usual == null ? "0" : usual));
        grades.forEach((place, grade) -> {
            if (place.equals("left") || place.equals("right")) {
                said.add(place + " side " + said(grade));
            }
        });
        for (Joint joint : joints) {
            String grade = grades.get(joint.id());
            grade = grade == null ? grades.get(joint.entry().id()) : grade;
            if (grade != null) {
                said.add(joint.name() + " " + said(grade));
            }
        }
        return String.join("; ", said);
    }
}
