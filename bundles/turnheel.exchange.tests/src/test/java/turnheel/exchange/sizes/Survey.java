package turnheel.exchange.sizes;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The survey's figures, copied beside the tests with their source; read without the reader under test. */
final class Survey {

    private Survey() {
    }

    /** The lines of a file as column name and text. */
    static List<Map<String, String>> rows(String file) {
        try (InputStream in = Objects.requireNonNull(Survey.class.getResourceAsStream(file), file);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().filter(line -> !line.startsWith("#")).toList();
            String[] columns = lines.getFirst().split(",");
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] fields = line.split(",");
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < columns.length; i++) {
                    row.put(columns[i], fields[i]);
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Map<String, String>> rows(String file, String sex) {
        return rows(file).stream().filter(row -> row.get("sex").equals(sex)).toList();
    }

    static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
