package putback.store.sheets;

import java.util.List;

/**
 * What is asked about a car so that nobody has to write a sheet.
 *
 * @param asked in a mechanic's words
 * @param options two or three; the first is what the stock sheet describes
 */
public record Question(String id, String asked, List<Option> options) {
    public Question {
        options = List.copyOf(options);
    }
}
