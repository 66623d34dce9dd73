package putback.app.json;

import java.math.BigDecimal;
import putback.labour.price.Observed;
import putback.store.books.Lesson;

/** Something that a garage has seen, as a line that can be read again. */
public final class LearntJson {
    private static final int ROUGH = 120;

    private LearntJson() {}

    /** One object in one line, with the family of sheets to which it belongs. */
    public static String of(Lesson lesson) {
        JsonWriter json = new JsonWriter(ROUGH);
        json.beginObject().key("sheet").value(lesson.family());
        Observed seen = lesson.seen();
        if (seen instanceof Observed.Took took) {
            json.key("joint").value(took.joint());
            json.key("do").value(took.opening() ? "open" : "close");
            json.key("minutes").value(BigDecimal.valueOf(took.minutes()));
        } else if (seen instanceof Observed.Rusted rusted) {
            json.key("joint").value(rusted.joint());
            json.key("rust").value(rusted.grade().number());
            json.key("of").value(rusted.of()).key("seized").value(rusted.seized());
        } else if (seen instanceof Observed.Tried tried) {
            json.key("resort").value(tried.resort()).key("worked").value(tried.worked());
            if (tried.minutes() > 0) {
                json.key("minutes").value(BigDecimal.valueOf(tried.minutes()));
            }
        }
        return json.endObject().toString();
    }
}
