package turnheel.exchange.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.exchange.table.FormulaLookalikes;

/**
 * The grading table: a record for every number with key, part, label and unit, then one field for every size. The
 * first record names the fields, sizes by their labels. A number that a size lacks is an empty field. Lines end in
 * CR LF, as RFC 4180 says, and there is no byte-order mark.
 *
 * <p>A text that a spreadsheet program would run as a formula gets an apostrophe in front: programs take what
 * follows as text, and readers of the file can take it off again. Numbers, negative ones too, stand as they are: in
 * full precision, with a decimal point.
 */
public final class CountsCsv {

    private static final String TEXT_MARK = "'";

    private CountsCsv() {
    }

    /**
     * Writes the table. The same graded pattern gives the same bytes; the stream is not closed.
     *
     * @throws IOException when the stream fails
     */
    public static void write(Graded graded, OutputStream out) throws IOException {
        StringBuilder table = new StringBuilder();
        try (CSVPrinter records = new CSVPrinter(table, CSVFormat.RFC4180)) {
            records.printRecord(Stream.concat(Stream.of("key", "part", "label", "unit"),
                    graded.sizes().stream().map(GradedSize::label)).map(CountsCsv::text));
            for (Parameter parameter : graded.parameters()) {
                records.printRecord(record(graded, parameter));
            }
        }
        out.write(table.toString().getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    private static Stream<String> record(Graded graded, Parameter parameter) {
        Stream<String> names = Stream.of(parameter.key().name(), parameter.part().prefix(), parameter.label(),
                parameter.unit().symbol()).map(CountsCsv::text);
        return Stream.concat(names, graded.sizes().stream()
                .map(size -> size.cell(parameter).map(cell -> number(cell.value())).orElse("")));
    }

    private static String text(String value) {
        return FormulaLookalikes.contains(value) ? TEXT_MARK + value : value;
    }

    /** The shortest decimal number that reads back as the same value. */
    private static String number(double value) {
        return value == 0 ? "0" : new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
