package putback.app.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.labour.price.Invoice;
import putback.labour.price.Line;

/** Lines, tax and total, on an estimate and on an invoice alike. */
final class InvoiceTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("What", 58, false),
            new Column("Quantity", 12, true),
            new Column("Unit", 12, false),
            new Column("Amount", 18, true));

    private InvoiceTable() {}

    static Block.Table of(Invoice invoice, HouseStyle style) {
        List<Row> rows = new ArrayList<>();
        for (Line one : invoice.lines()) {
            BigDecimal quantity = one.quantity().stripTrailingZeros();
            rows.add(Row.Cells.of(
                    Cell.of(one.text()),
                    Cell.of(one.unit().isEmpty() ? "" : style.number(quantity)),
                    Cell.of(one.unit()),
                    Cell.of(style.money(one.amount()))));
        }
        rows.add(new Row.Sum(List.of(Cell.of("Total"), Cell.EMPTY, Cell.EMPTY, Cell.of(style.money(invoice.total())))));
        return new Block.Table(COLUMNS, rows, true);
    }
}
