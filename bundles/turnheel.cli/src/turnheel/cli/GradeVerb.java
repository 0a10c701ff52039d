package turnheel.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.cli.Table.Side;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Source;
import turnheel.engine.grading.Why;
import turnheel.engine.term.Key;
import turnheel.model.Literals;

/** {@code grade}: the grading table, the reason of a cell, the counts a size can have, or all over other gauges. */
@Command(name = "grade")
final class GradeVerb extends Verb {

    private static final String OVERRIDDEN = "*";

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--why", paramLabel = "KEY[SIZE]")
    private String why;

    @Option(names = "--options", paramLabel = "SIZE")
    private String optionsOf;

    @Option(names = "--gauges")
    private boolean gauges;

    GradeVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        if (Stream.of(why != null, optionsOf != null, gauges).filter(given -> given).count() > 1) {
            throw new Refusal(Words.GRADE_ONE_QUESTION.text());
        }
        Graded graded = why == null && optionsOf == null ? pattern.complete() : pattern.graded();
        if (optionsOf != null) {
            OptionsText options = options();
            if (isJson()) {
                output().document(Json.document("turnheel-options/1", options::write));
            } else {
                output().lines(options.lines());
            }
        } else if (why != null) {
            Why reason = why(graded);
            if (isJson()) {
                output().document(Json.document("turnheel-why/1", json -> write(reason, json)));
            } else {
                output().lines(lines(reason));
            }
        } else if (gauges) {
            GaugesText table = GaugesText.of(graded);
            if (isJson()) {
                output().document(Json.document("turnheel-gauges/1", table::write));
            } else {
                output().lines(table.lines());
            }
        } else if (isJson()) {
            output().document(Json.document("turnheel-grade/1", json -> write(graded, json)));
        } else {
            output().lines(lines(graded));
            output().lines(RelaxationsText.of(graded).lines());
        }
        return Verdict.noted(Checks.of(graded), output(), pattern.name());
    }

    private OptionsText options() throws Refusal {
        CellName.knownSize(pattern.graded().design(), optionsOf, pattern.name());
        return OptionsText.of(pattern.complete(List.of(optionsOf)), optionsOf);
    }

    private Why why(Graded graded) throws Refusal {
        CellName cell = CellName.parse(why).filter(named -> named.size().isPresent())
                .orElseThrow(() -> new Refusal(Words.NOT_A_CELL.with(why)));
        Key key = cell.parameter(graded.design().ownRows()).key();
        String size = CellName.knownSize(graded.design(), cell.size().orElseThrow(), pattern.name());
        try {
            return Why.of(graded, key, size);
        } catch (IllegalArgumentException absent) {
            throw new Refusal(absent.getMessage());
        }
    }

    private static List<String> lines(Why reason) {
        List<String> lines = new ArrayList<>(reason.lines());
        lines.add(Words.WHY_BASIS.with(keys(reason.basis())));
        lines.add(Words.WHY_DEPENDENTS.with(keys(reason.dependents())));
        return lines;
    }

    private static String keys(List<Key> keys) {
        return keys.isEmpty() ? Words.NOTHING.text() : String.join(", ", keys.stream().map(Key::name).toList());
    }

    private static List<String> lines(Graded graded) {
        Design design = graded.design();
        List<String> lines = new ArrayList<>();
        if (!design.title().isEmpty()) {
            lines.add(design.title());
        }
        lines.add(Words.GRADE_SUBTITLE.with(Literals.text(design.direction()),
                new GaugePair(design.stitchGauge(), design.roundGauge()).sentence()));
        lines.add("");
        boolean overridden = cells(graded).stream().anyMatch(cell -> cell.source() == Source.OVERRIDE);
        lines.addAll(table(graded, overridden));
        if (overridden) {
            lines.add("");
            lines.add(Words.GRADE_LEGEND.text());
        }
        return lines;
    }

    private static List<Cell> cells(Graded graded) {
        return graded.sizes().stream().flatMap(size -> size.cells().values().stream()).toList();
    }

    private static List<String> table(Graded graded, boolean overridden) {
        List<Side> sides = new ArrayList<>(List.of(Side.LEFT, Side.LEFT));
        List<String> heading = new ArrayList<>(List.of(Words.HEADING_KEY.text(), Words.HEADING_UNIT.text()));
        String noMark = overridden ? " ".repeat(OVERRIDDEN.length()) : "";
        for (GradedSize size : graded.sizes()) {
            sides.add(Side.RIGHT);
            heading.add(size.label() + noMark);
        }
        Table table = new Table(sides).row(heading);
        Part part = null;
        for (Parameter parameter : graded.parameters()) {
            if (parameter.part() != part) {
                table.row(sides.stream().map(side -> "").toList());
                part = parameter.part();
            }
            List<String> row = new ArrayList<>(List.of(parameter.key().name(), Figures.unit(parameter.unit())));
            for (GradedSize size : graded.sizes()) {
                Optional<Cell> cell = size.cell(parameter);
                boolean marked = cell.isPresent() && cell.get().source() == Source.OVERRIDE;
                row.add(cell.map(there -> Figures.of(there.value(), parameter.unit())).orElse(Figures.NONE)
                        + (marked ? OVERRIDDEN : noMark));
            }
            table.row(row);
        }
        return table.lines();
    }

    private static void write(Graded graded, JsonGenerator json) throws IOException {
        Json.texts(json, "sizes", graded.sizes().stream().map(GradedSize::label).toList());
        json.writeArrayFieldStart("rows");
        for (Parameter parameter : graded.parameters()) {
            json.writeStartObject();
            json.writeStringField("key", parameter.key().name());
            json.writeStringField("part", parameter.part().prefix());
            json.writeStringField("unit", parameter.unit().symbol());
            json.writeArrayFieldStart("values");
            for (GradedSize size : graded.sizes()) {
                Optional<Cell> cell = size.cell(parameter);
                if (cell.isPresent()) {
                    Json.number(json, cell.get().value());
                } else {
                    json.writeNull();
                }
            }
            json.writeEndArray();
            json.writeArrayFieldStart("sources");
            for (GradedSize size : graded.sizes()) {
                json.writeString(size.cell(parameter).map(cell -> cell.source().word()).orElse(null));
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        RelaxationsText.of(graded).write(json);
    }

    private static void write(Why reason, JsonGenerator json) throws IOException {
        Cell cell = reason.cell();
        json.writeStringField("key", cell.key().name());
        json.writeStringField("size", reason.size());
        json.writeStringField("unit", cell.parameter().unit().symbol());
        json.writeFieldName("value");
        Json.number(json, cell.value());
        json.writeStringField("source", cell.source().word());
        Json.texts(json, "lines", reason.lines());
        Json.texts(json, "basis", reason.basis());
        Json.texts(json, "dependents", reason.dependents());
    }
}
