package turnheel.exchange.errata;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import turnheel.engine.comparing.Comparison;
import turnheel.exchange.table.CellContent;
import turnheel.exchange.table.FormulaLookalikes;

/** The errata as a plain table, a record for every erratum. */
public final class ErrataTable {

    /** What each record tells. */
    public static final List<String> COLUMNS = List.of("chapter", "line", "size", "reads", "should read");

    private static final String TEXT_MARK = "'";

    private ErrataTable() {
    }

    /** The cells of every record; none where nothing reads otherwise. */
    public static List<List<CellContent>> rows(Comparison comparison) {
        return ErrataRow.of(comparison).stream()
                .map(row -> texts(row).<CellContent>map(CellContent.Text::new).toList()).toList();
    }

    /**
     * The same as comma-separated values (RFC 4180), the columns first. A text that a spreadsheet program would run gets an
     * apostrophe in front.
     */
    public static String csv(Comparison comparison) {
        StringBuilder table = new StringBuilder();
        try (CSVPrinter records = new CSVPrinter(table, CSVFormat.RFC4180)) {
            records.printRecord(COLUMNS);
            for (ErrataRow row : ErrataRow.of(comparison)) {
                records.printRecord(texts(row)
                        .map(text -> FormulaLookalikes.contains(text) ? TEXT_MARK + text : text));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return table.toString();
    }

    private static Stream<String> texts(ErrataRow row) {
        return Stream.of(row.chapter(), row.line(), row.size(), row.reads(), row.shouldRead());
    }
}
