package putback.app.web.job;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.plan.Plan;
import putback.sheet.Joint;
import putback.sheet.Part;

/** Parts and fixings by the names that people say; an id is for programs. */
public record Places(Map<String, String> names) {
    public Places {
        names = Map.copyOf(names);
    }

    static Places of(@Nullable Plan plan) {
        Map<String, String> names = new TreeMap<>();
        if (plan != null) {
            for (Part part : plan.assembly().parts()) {
                names.put(part.id(), part.name());
            }
            for (Joint joint : plan.assembly().joints()) {
                names.put(joint.id(), joint.name());
            }
        }
        return new Places(names);
    }

    /** Where something was found, in words: what a person wrote stays as it is. */
    public String said(String place) {
        String name = names.get(place);
        return name == null ? place : name;
    }

    /** The same before what was found there. */
    public String said(String place, String words) {
        return place.isEmpty() ? words : said(place) + ": " + words;
    }
}
