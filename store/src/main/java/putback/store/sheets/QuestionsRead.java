package putback.store.sheets;

import java.util.List;
import java.util.Map;

/** What came of reading the questions about a stock sheet. */
public sealed interface QuestionsRead {
    /**
     * @param seams what has to be said when the sheet lies over another, by the id of that other
     */
    record Sound(List<Question> questions, Map<String, Piece.Entries> seams) implements QuestionsRead {
        public Sound {
            questions = List.copyOf(questions);
            seams = Map.copyOf(seams);
        }
    }

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements QuestionsRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
