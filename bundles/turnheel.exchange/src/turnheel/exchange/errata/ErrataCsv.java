package turnheel.exchange.errata;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import turnheel.engine.comparing.Comparison;
import turnheel.exchange.table.FormulaLookalikes;

/**
 * The errata as comma-separated values (RFC 4180): chapter, line, size, reads, should read. The first record names them. A text
 * that a spreadsheet program would run gets an apostrophe in front.
 */
public final class ErrataCsv {

    private static final String TEXT_MARK = "'";

    private ErrataCsv() {
    }

    /** The whole table; only its first record where nothing reads otherwise. */
    public static String text(Comparison comparison) {
        StringBuilder table = new StringBuilder();
        try (CSVPrinter records = new CSVPrinter(table, CSVFormat.RFC4180)) {
            records.printRecord("chapter", "line", "size", "reads", "should read");
            for (ErrataRow row : ErrataRow.of(comparison)) {
                records.printRecord(Stream.of(row.chapter(), row.line(), row.size(), row.reads(), row.shouldRead())
                        .map(text -> FormulaLookalikes.contains(text) ? TEXT_MARK + text : text));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return table.toString();
    }
}
