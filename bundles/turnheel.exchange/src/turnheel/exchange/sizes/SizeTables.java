package turnheel.exchange.sizes;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

import turnheel.engine.design.Size;
import turnheel.engine.design.Spelling;
import turnheel.exchange.sizes.SizeTable.Measured;

/** The built-in size tables. Their figures are in {@code <id>.csv}, their words in {@code tables.properties}. */
public final class SizeTables {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.exchange.sizes.tables");
    private static final List<String> IDS = List.of("women", "men", "women-by-foot-length", "men-by-foot-length",
            "adults-by-foot-length");

    private SizeTables() {
    }

    /** All built-in tables, in the order in which they are offered. */
    public static List<SizeTable> builtIn() {
        return IDS.stream().map(SizeTables::read).toList();
    }

    /** The ids of the built-in tables. */
    public static List<String> ids() {
        return IDS;
    }

    /**
     * The built-in table of this id, in upper or lower case.
     *
     * @throws IllegalArgumentException when there is none; the message suggests the nearest and lists all
     */
    public static SizeTable byId(String id) {
        return IDS.stream().filter(id::equalsIgnoreCase).findFirst().map(SizeTables::read)
                .orElseThrow(() -> new IllegalArgumentException(unknown(id)));
    }

    private static String unknown(String id) {
        String all = String.join(", ", IDS);
        return Spelling.suggestion(id, IDS).map(nearest -> text("unknown.nearest", id, nearest, all))
                .orElseGet(() -> text("unknown", id, all));
    }

    private static String text(String key, String... arguments) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(arguments);
    }

    private static SizeTable read(String id) {
        return new SizeTable(id, WORDS.getString(id + ".name"), Measured.BODY, WORDS.getString("source"),
                WORDS.getString(id + ".note"), sizes(id + ".csv"));
    }

    private static List<Size> sizes(String resource) {
        try (InputStream in = SizeTables.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the size table %s is missing from the bundle".formatted(resource));
            }
            return SizeTableCsv.read(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new IllegalStateException("the size table %s cannot be read".formatted(resource), e);
        }
    }
}
