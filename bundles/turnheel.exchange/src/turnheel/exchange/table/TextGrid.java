package turnheel.exchange.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import turnheel.exchange.table.Grid.Fault;

/**
 * Reads tables of separated values in UTF-8. What separates is what the first line holds most of: commas, semicolons
 * (as programs write where the comma is the decimal mark) or tabs.
 */
public final class TextGrid {

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

    private TextGrid() {
    }

    public static Grid read(byte[] content) {
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
        } catch (CharacterCodingException notUtf8) {
            return Grid.broken(List.of(), Fault.NOT_UTF_8);
        }
        if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
            text = text.substring(1);
        }
        return records(text, CSVFormat.RFC4180.builder().setDelimiter(separator(text)).setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true).get());
    }

    private static char separator(String text) {
        String firstLine = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char most = SEPARATORS.getFirst();
        for (char separator : SEPARATORS) {
            if (times(separator, firstLine) > times(most, firstLine)) {
                most = separator;
            }
        }
        return most;
    }

    private static long times(char separator, String line) {
        return line.chars().filter(character -> character == separator).count();
    }

    private static Grid records(String text, CSVFormat form) {
        List<Grid.Row> rows = new ArrayList<>();
        try (CSVParser records = CSVParser.parse(new StringReader(text), form)) {
            for (CSVRecord cells : records) {
                if (rows.size() == Grid.MOST_ROWS) {
                    return Grid.broken(rows, Fault.TOO_LONG);
                }
                rows.add(new Grid.Row((int) records.getCurrentLineNumber(),
                        cells.stream().map(String::strip).toList()));
            }
        } catch (IOException | UncheckedIOException brokenQuotes) {
            // Text in memory cannot fail to be read otherwise.
            return Grid.broken(rows, Fault.BROKEN_QUOTES);
        }
        return Grid.of(rows);
    }
}
