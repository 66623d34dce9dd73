package putback.app.papers;

/** In which order a garage writes day, month and year. */
public enum DateOrder {
    YEAR_MONTH_DAY,
    DAY_MONTH_YEAR,
    MONTH_DAY_YEAR
}
