package putback.store.books;

import putback.job.Stage;

/** One step of a job's course: who moved it where, when and why. */
public record Move(int number, Stage stage, String at, String by, String why) {}
