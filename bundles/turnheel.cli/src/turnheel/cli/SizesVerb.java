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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import turnheel.cli.Table.Side;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.design.Unit;
import turnheel.engine.term.Key;
import turnheel.exchange.SizeFiles;
import turnheel.exchange.sizes.ShoeSize;
import turnheel.exchange.sizes.SizeTable;
import turnheel.exchange.sizes.SizeTableProblem;
import turnheel.exchange.sizes.SizeTableReading;
import turnheel.exchange.sizes.SizeTables;

/** {@code sizes}: the built-in size tables, a table of one's own, and shoe sizes. */
@Command(name = "sizes")
final class SizesVerb extends Verb {

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", descriptionKey = "table")
    private String name;

    @Option(names = "--shoe", paramLabel = "SIZE")
    private String shoe;

    SizesVerb(Output output) {
        super(output);
    }

    /**
     * The table of a name, built in or in a file. One that must be put right first is refused.
     */
    static SizeTable table(String name) throws Refusal {
        if (!SizeFiles.isName(name)) {
            return builtIn(name);
        }
        SizeTableReading reading = SizeFiles.read(PatternArgument.path(name));
        List<SizeTableProblem> errors = reading.errors();
        if (!errors.isEmpty()) {
            throw refused(name, errors);
        }
        return SizeTables.own(name, reading);
    }

    private static Refusal refused(String name, List<SizeTableProblem> errors) {
        String first = errors.getFirst().sentence();
        return new Refusal(errors.size() == 1 ? Words.SIZES_REFUSED.with(name, first)
                : Words.SIZES_REFUSED_MORE.with(name, first, errors.size() - 1));
    }

    private static SizeTable builtIn(String name) throws Refusal {
        try {
            return SizeTables.byId(name);
        } catch (IllegalArgumentException unknown) {
            throw new Refusal(unknown.getMessage());
        }
    }

    @Override
    public Integer call() throws Refusal {
        if (shoe != null) {
            return shoe();
        }
        if (name != null && SizeFiles.isName(name)) {
            return own();
        }
        List<SizeTable> tables = name == null ? SizeTables.builtIn() : List.of(builtIn(name));
        if (isJson()) {
            output().document(Json.document("turnheel-sizes/1", json -> write(tables, List.of(), json)));
        } else if (name == null) {
            output().lines(list(tables));
        } else {
            output().lines(lines(tables.getFirst()));
        }
        return Main.DONE;
    }

    /** Shows a table with its problems, whatever they are, so that all of them can be put right at once. */
    private int own() throws Refusal {
        SizeTableReading reading = SizeFiles.read(PatternArgument.path(name));
        if (reading.sizes().isEmpty()) {
            throw refused(name, reading.problems());
        }
        SizeTable table = SizeTables.own(name, reading);
        if (isJson()) {
            output().document(Json.document("turnheel-sizes/1",
                    json -> write(List.of(table), reading.problems(), json)));
        } else {
            output().lines(lines(table));
            if (!reading.problems().isEmpty()) {
                output().line("");
                reading.problems().forEach(problem -> output().line(problem.sentence()));
            }
        }
        return reading.errors().isEmpty() ? Main.DONE : Main.QUERIES;
    }

    private int shoe() throws Refusal {
        if (name != null) {
            throw new Refusal(Words.SHOE_OR_TABLE.text());
        }
        double foot = footLength();
        List<ShoeSize> sizes = ShoeSize.of(foot);
        if (isJson()) {
            output().document(Json.document("turnheel-shoe/1", json -> write(foot, sizes, json)));
        } else {
            output().line(Words.SHOE_FOOT.with(Figures.of(foot, Unit.MILLIMETRES)));
            sizes.forEach(size -> output().line(size.toString()));
        }
        return Main.DONE;
    }

    private double footLength() throws Refusal {
        try {
            return ShoeSize.footLengthMm(shoe);
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with("--shoe", refused.getMessage()));
        }
    }

    private static void write(double foot, List<ShoeSize> sizes, JsonGenerator json) throws IOException {
        json.writeNumberField("footLengthMm", foot);
        json.writeArrayFieldStart("sizes");
        for (ShoeSize size : sizes) {
            json.writeStartObject();
            json.writeStringField("system", size.system().title());
            json.writeNumberField("size", size.number());
            json.writeEndObject();
        }
        json.writeEndArray();
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

    private static void write(List<SizeTable> tables, List<SizeTableProblem> problems, JsonGenerator json)
            throws IOException {
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
        json.writeArrayFieldStart("problems");
        for (SizeTableProblem problem : problems) {
            json.writeStartObject();
            json.writeStringField("kind", problem.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.writeStringField("severity", problem.kind().severity().name().toLowerCase(Locale.ROOT));
            json.writeNumberField("row", problem.row());
            json.writeNumberField("column", problem.column());
            json.writeStringField("message", problem.sentence());
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
