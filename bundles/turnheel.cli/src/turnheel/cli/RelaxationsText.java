package turnheel.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import com.fasterxml.jackson.core.JsonGenerator;

import turnheel.cli.Table.Side;
import turnheel.engine.design.Unit;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Relaxation;
import turnheel.engine.grading.Relaxations;
import turnheel.engine.query.Check;

/** What to give up where no counts suit all parts and sizes, with the counts that each way gives. */
final class RelaxationsText {

    private static final Set<Check> CONFLICTS = Set.of(Check.NEEDS_EXCLUDE, Check.COUNTS_OUT_OF_REACH,
            Check.COUNTS_CLASH);

    private final Graded graded;
    private final boolean needed;
    private final List<Relaxation> ways;

    private RelaxationsText(Graded graded) {
        this.graded = graded;
        this.needed = graded.queries().stream().anyMatch(query -> CONFLICTS.contains(query.check()));
        this.ways = needed ? Relaxations.of(graded) : List.of();
    }

    static RelaxationsText of(Graded graded) {
        return new RelaxationsText(graded);
    }

    /** The lines to put below a result, with a blank one first; none where there is no conflict. */
    List<String> lines() {
        if (!needed) {
            return List.of();
        }
        if (ways.isEmpty()) {
            return List.of("", Words.RELAXATIONS_NONE.text());
        }
        List<String> lines = new ArrayList<>(List.of("", Words.RELAXATIONS.text(), ""));
        lines.addAll(table());
        return lines;
    }

    private List<String> table() {
        List<String> labels = graded.sizes().stream().map(GradedSize::label).toList();
        List<Side> sides = new ArrayList<>();
        labels.forEach(label -> sides.add(Side.RIGHT));
        sides.add(Side.RIGHT);
        sides.add(Side.LEFT);
        List<String> heading = new ArrayList<>(labels);
        heading.add(Words.HEADING_DEVIATION.text());
        heading.add(Words.HEADING_RELAXATION.text());
        Table table = new Table(sides).row(heading);
        for (Relaxation way : ways) {
            List<String> row = new ArrayList<>();
            labels.forEach(label -> row.add(OptionsText.count(way.sizes(), label)));
            row.add(Figures.of(way.deviationPercent(), Unit.PERCENT));
            row.add(String.join(" ", way.sentences()));
            table.row(row);
        }
        return table.lines();
    }

    void write(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("relaxations");
        for (Relaxation way : ways) {
            json.writeStartObject();
            Json.texts(json, "changes", way.sentences());
            OptionsText.number(json, "deviationPercent", way.deviationPercent());
            OptionsText.fits(json, "sizes", way.sizes());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
