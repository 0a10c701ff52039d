package turnheel.exchange.testknit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.exchange.table.CellContent;
import turnheel.exchange.table.FormulaLookalikes;

/**
 * The sheet as a table: a record for each thing asked for in each size, with an empty field for what was found. Its
 * columns are {@link #COLUMNS}; whoever fills it in may change their order and leave out all but size, key and actual.
 */
public final class ResultTable {

    /** The headings, in the order in which they are written. */
    public static final List<String> COLUMNS = List.of("size", "key", "what", "unit", "predicted", "actual", "remark");

    private static final String TEXT_MARK = "'";

    private ResultTable() {
    }

    /** The cells below the headings. */
    public static List<List<CellContent>> rows(Graded graded, List<GradedSize> sizes) {
        List<List<CellContent>> rows = new ArrayList<>();
        for (GradedSize size : sizes) {
            for (Item item : Item.of(graded, size)) {
                CellContent predicted = item.predicted().isEmpty() ? new CellContent.Empty()
                        : new CellContent.Figure(Double.parseDouble(Figures.plain(item.predicted().getAsDouble())));
                rows.add(List.of(new CellContent.Text(size.label()), new CellContent.Text(item.key()),
                        new CellContent.Text(item.label()), new CellContent.Text(item.kind().unit()), predicted,
                        new CellContent.Empty(), new CellContent.Empty()));
            }
        }
        return rows;
    }

    /**
     * The table as comma-separated values (RFC 4180, lines end in CR LF). A text that a spreadsheet program would run
     * as a formula gets an apostrophe in front, which {@link TestKnitResults} takes off again.
     */
    public static String csv(Graded graded, List<GradedSize> sizes) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter records = new CSVPrinter(text, CSVFormat.RFC4180)) {
            records.printRecord(COLUMNS);
            for (List<CellContent> row : rows(graded, sizes)) {
                records.printRecord(row.stream().map(ResultTable::field));
            }
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        return text.toString();
    }

    private static String field(CellContent cell) {
        return switch (cell) {
            case CellContent.Text(String value) -> FormulaLookalikes.contains(value) ? TEXT_MARK + value : value;
            case CellContent.Figure(double value) -> Figures.plain(value);
            case CellContent.Formula formula -> throw new IllegalStateException("results hold no formula");
            case CellContent.TextFormula formula -> throw new IllegalStateException("results hold no formula");
            case CellContent.Empty() -> "";
        };
    }

    /** The text without the apostrophe that {@link #csv} put in front. */
    static String plain(String text) {
        return text.startsWith(TEXT_MARK) && FormulaLookalikes.contains(text.substring(1)) ? text.substring(1) : text;
    }
}
