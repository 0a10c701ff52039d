package turnheel.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

import turnheel.cli.Table.Side;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;
import turnheel.exchange.sizes.SizeTable;
import turnheel.exchange.sizes.SizeTables;

/** {@code sizes}: the built-in size tables. */
@Command(name = "sizes")
final class SizesVerb extends Verb {

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", descriptionKey = "table")
    private String name;

    SizesVerb(Output output) {
        super(output);
    }

    /** The table of a name. */
    static SizeTable table(String name) throws Refusal {
        try {
            return SizeTables.byId(name);
        } catch (IllegalArgumentException unknown) {
            throw new Refusal(unknown.getMessage());
        }
    }

    @Override
    public Integer call() throws Refusal {
        List<SizeTable> tables = name == null ? SizeTables.builtIn() : List.of(table(name));
        if (isJson()) {
            output().document(Json.document("turnheel-sizes/1", json -> write(tables, json)));
        } else if (name == null) {
            output().lines(list(tables));
        } else {
            output().lines(lines(tables.getFirst()));
        }
        return Main.DONE;
    }

    private static List<String> list(List<SizeTable> tables) {
        Table table = new Table(Side.LEFT, Side.LEFT, Side.LEFT).row(Words.HEADING_NAME.text(),
                Words.HEADING_TITLE.text(), Words.HEADING_SIZES.text());
        Set<String> sources = new LinkedHashSet<>();
        for (SizeTable each : tables) {
            table.row(each.id(), each.name(), String.join(", ", each.sizes().stream().map(Size::label).toList()));
            sources.add(Words.SIZES_SOURCE.with(each.source()));
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        lines.addAll(sources);
        return lines;
    }

    private static List<String> lines(SizeTable sizes) {
        Set<Key> keys = new LinkedHashSet<>();
        sizes.sizes().forEach(size -> keys.addAll(size.inputs().keySet()));
        List<Side> sides = new ArrayList<>(List.of(Side.LEFT));
        List<String> heading = new ArrayList<>(List.of(Words.HEADING_SIZE.text()));
        for (Key key : keys) {
            sides.add(Side.RIGHT);
            heading.add(key.name());
        }
        Table table = new Table(sides).row(heading);
        for (Size size : sizes.sizes()) {
            List<String> row = new ArrayList<>(List.of(size.label()));
            for (Key key : keys) {
                Quantity quantity = size.inputs().get(key);
                row.add(quantity == null ? Figures.NONE : quantity.toString());
            }
            table.row(row);
        }
        List<String> lines = new ArrayList<>(List.of(sizes.name(), ""));
        lines.addAll(table.lines());
        lines.add("");
        lines.add(sizes.note());
        lines.add(Words.SIZES_SOURCE.with(sizes.source()));
        return lines;
    }

    private static void write(List<SizeTable> tables, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("tables");
        for (SizeTable table : tables) {
            json.writeStartObject();
            json.writeStringField("name", table.id());
            json.writeStringField("title", table.name());
            json.writeStringField("measured", table.measured().name().toLowerCase(Locale.ROOT));
            json.writeStringField("source", table.source());
            json.writeStringField("note", table.note());
            json.writeArrayFieldStart("sizes");
            for (Size size : table.sizes()) {
                write(size, json);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void write(Size size, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("label", size.label());
        json.writeObjectFieldStart("measurements");
        for (Map.Entry<Key, Quantity> measurement : size.inputs().entrySet()) {
            json.writeStringField(measurement.getKey().name(), measurement.getValue().toString());
        }
        json.writeEndObject();
        json.writeEndObject();
    }
}
