package turnheel.exchange.sizes;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;

/**
 * Reads sizes from comma-separated values: the first record holds {@code size} and the keys of the measurements,
 * every other one a label and a quantity with its unit for each key ({@code 240 mm}, {@code 9 1/2 in}). An empty
 * field is a measurement that the size does not have. Lines that start with {@code #} are remarks.
 */
final class SizeTableCsv {

    private static final CSVFormat FORM = CSVFormat.RFC4180.builder().setCommentMarker('#').setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true).get();
    private static final String LABEL = "size";

    private final List<Key> keys = new ArrayList<>();
    private final List<Size> sizes = new ArrayList<>();
    private final Set<String> labels = new HashSet<>();

    private SizeTableCsv() {
    }

    /**
     * The sizes of a table, in its order; their ids are {@code s1}, {@code s2} and so on.
     *
     * @throws IllegalArgumentException when the table is no table of sizes; the message names the line
     * @throws IOException when the reader fails
     */
    static List<Size> read(Reader reader) throws IOException {
        SizeTableCsv table = new SizeTableCsv();
        try (CSVParser records = CSVParser.parse(reader, FORM)) {
            long line = 1;
            for (CSVRecord values : records) {
                line = records.getCurrentLineNumber();
                table.add(values, line);
            }
        } catch (UncheckedIOException e) {
            throw new IllegalArgumentException("not a table of comma-separated values: %s".formatted(
                    e.getCause().getMessage()), e);
        }
        if (table.sizes.isEmpty()) {
            throw new IllegalArgumentException("the table has no sizes; the first line holds \"%s\" and keys such as "
                    .formatted(LABEL) + "body.footLength, every other line a size");
        }
        return table.sizes;
    }

    private void add(CSVRecord values, long line) {
        try {
            if (keys.isEmpty()) {
                head(values);
            } else {
                size(values);
            }
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("line %d: %s".formatted(line, e.getMessage()), e);
        }
    }

    private void head(CSVRecord values) {
        if (values.size() < 2 || !values.get(0).equals(LABEL)) {
            throw new IllegalArgumentException(
                    "the first line of a table of sizes holds \"%s\" and at least one key; it starts with \"%s\""
                            .formatted(LABEL, values.get(0)));
        }
        values.stream().skip(1).map(Key::new).forEach(keys::add);
    }

    private void size(CSVRecord values) {
        if (values.size() != keys.size() + 1) {
            throw new IllegalArgumentException("%d values where the first line has %d".formatted(values.size(),
                    keys.size() + 1));
        }
        if (!labels.add(values.get(0))) {
            throw new IllegalArgumentException("there is a size \"%s\" already".formatted(values.get(0)));
        }
        Map<Key, Quantity> inputs = new LinkedHashMap<>();
        for (int i = 0; i < keys.size(); i++) {
            String quantity = values.get(i + 1);
            if (!quantity.isEmpty()) {
                inputs.put(keys.get(i), Quantity.parse(quantity));
            }
        }
        sizes.add(new Size("s" + (sizes.size() + 1), values.get(0), inputs, Map.of()));
    }
}
