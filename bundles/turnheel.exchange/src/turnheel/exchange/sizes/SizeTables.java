package turnheel.exchange.sizes;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;

import turnheel.engine.design.Spelling;
import turnheel.exchange.sizes.SizeTable.Measured;

/** The built-in size tables. Their figures are in {@code <id>.csv}, their words in {@code tables.properties}. */
public final class SizeTables {

    private static final List<BuiltIn> BUILT_IN = List.of(new BuiltIn("women", Measured.BODY, "survey"),
            new BuiltIn("men", Measured.BODY, "survey"), new BuiltIn("women-by-foot-length", Measured.BODY, "survey"),
            new BuiltIn("men-by-foot-length", Measured.BODY, "survey"),
            new BuiltIn("adults-by-foot-length", Measured.BODY, "survey"),
            new BuiltIn("children-by-age", Measured.BODY, "children"),
            new BuiltIn("trade-by-shoe-size", Measured.SOCK, "trade"));
    private static final List<String> IDS = BUILT_IN.stream().map(BuiltIn::id).toList();

    private record BuiltIn(String id, Measured measured, String source) {
    }

    private SizeTables() {
    }

    /** All built-in tables, in the order in which they are offered. */
    public static List<SizeTable> builtIn() {
        return BUILT_IN.stream().map(SizeTables::read).toList();
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
        return BUILT_IN.stream().filter(table -> id.equalsIgnoreCase(table.id())).findFirst().map(SizeTables::read)
                .orElseThrow(() -> new IllegalArgumentException(unknown(id)));
    }

    /**
     * A table that somebody made.
     *
     * @param name of the file
     */
    public static SizeTable own(String name, SizeTableReading reading) {
        return new SizeTable(name, Words.plain("own.name"), Measured.BODY, Words.text("own.source", name),
                Words.plain("own.note"), reading.sizes());
    }

    private static String unknown(String id) {
        String all = String.join(", ", IDS);
        return Spelling.suggestion(id, IDS).map(nearest -> Words.text("unknown.nearest", id, nearest, all))
                .orElseGet(() -> Words.text("unknown", id, all));
    }

    private static SizeTable read(BuiltIn table) {
        return new SizeTable(table.id(), Words.plain(table.id() + ".name"), table.measured(),
                Words.plain(table.source()), Words.plain(table.id() + ".note"),
                reading(table.id() + ".csv").sizes());
    }

    private static SizeTableReading reading(String resource) {
        try (InputStream in = SizeTables.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the size table %s is missing from the bundle".formatted(resource));
            }
            SizeTableReading reading = SizeTableReader.text(in.readAllBytes());
            if (!reading.problems().isEmpty()) {
                throw new IllegalStateException("the size table %s: %s".formatted(resource,
                        reading.problems().getFirst().sentence()));
            }
            return reading;
        } catch (IOException e) {
            throw new IllegalStateException("the size table %s cannot be read".formatted(resource), e);
        }
    }
}
