package turnheel.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.core.JsonGenerator;

import turnheel.cli.Table.Side;
import turnheel.engine.design.Unit;
import turnheel.engine.grading.CountOptions;
import turnheel.engine.grading.CountOptions.Option;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.SizeFit;

/** The counts that a designer can choose from in one size, with what the other sizes would have then. */
record OptionsText(Graded graded, CountOptions options) {

    static OptionsText of(Graded graded, String size) {
        return new OptionsText(graded, CountOptions.of(graded, size));
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.OPTIONS_IDEAL.with(options.size(), Figures.of(options.ideal(), Unit.IDEAL_STITCHES),
                Figures.of(options.least(), Unit.IDEAL_STITCHES), Figures.of(options.most(), Unit.IDEAL_STITCHES)));
        lines.add("");
        lines.addAll(table());
        lines.add("");
        lines.add(Words.OPTIONS_OTHERS.with(options.size()));
        return lines;
    }

    private List<String> table() {
        List<String> others = graded.sizes().stream().map(GradedSize::label)
                .filter(label -> !label.equals(options.size())).toList();
        List<Side> sides = new ArrayList<>(List.of(Side.RIGHT, Side.RIGHT, Side.RIGHT));
        List<String> heading = new ArrayList<>(List.of(Words.HEADING_STITCHES.text(), Words.HEADING_AROUND.text(),
                Words.HEADING_EASE.text()));
        others.forEach(label -> {
            sides.add(Side.RIGHT);
            heading.add(label);
        });
        sides.add(Side.LEFT);
        heading.add(Words.HEADING_NOTE.text());
        Table table = new Table(sides).row(heading);
        for (Option option : options.options()) {
            List<String> row = new ArrayList<>(List.of(Integer.toString(option.fit().count()),
                    Figures.of(option.fit().circumferenceMm(), Unit.MILLIMETRES),
                    Figures.of(option.fit().easePercent(), Unit.PERCENT)));
            others.forEach(label -> row.add(count(option.others(), label)));
            row.add(note(option));
            table.row(row);
        }
        return table.lines();
    }

    /** The count of a size; a size that is not measured has none. */
    static String count(List<SizeFit> fits, String label) {
        return fits.stream().filter(fit -> fit.size().equals(label)).findFirst()
                .map(fit -> Integer.toString(fit.count())).orElse(Figures.NONE);
    }

    private static String note(Option option) {
        List<String> notes = new ArrayList<>();
        if (option.chosen()) {
            notes.add(Words.OPTION_CHOSEN.text());
        }
        if (!option.withinWindow()) {
            notes.add(Words.OPTION_FAR.text());
        }
        if (!option.broken().isEmpty()) {
            notes.add(Words.OPTION_BREAKS.with(String.join("; ", option.brokenInWords())));
        }
        if (!option.crowded().isEmpty()) {
            notes.add(Words.OPTION_CROWDS.with(String.join(", ", option.crowded())));
        }
        return String.join("; ", notes);
    }

    void write(JsonGenerator json) throws IOException {
        json.writeStringField("size", options.size());
        number(json, "ideal", options.ideal());
        number(json, "least", options.least());
        number(json, "most", options.most());
        json.writeArrayFieldStart("options");
        for (Option option : options.options()) {
            json.writeStartObject();
            fit(json, option.fit());
            json.writeBooleanField("chosen", option.chosen());
            json.writeBooleanField("withinWindow", option.withinWindow());
            Json.texts(json, "broken", option.brokenInWords());
            fits(json, "others", option.others());
            Json.texts(json, "crowded", option.crowded());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** What several sizes have. */
    static void fits(JsonGenerator json, String member, List<SizeFit> fits) throws IOException {
        json.writeArrayFieldStart(member);
        for (SizeFit fit : fits) {
            json.writeStartObject();
            json.writeStringField("size", fit.size());
            fit(json, fit);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    static void fit(JsonGenerator json, SizeFit fit) throws IOException {
        json.writeNumberField("stitches", fit.count());
        number(json, "circumferenceMm", fit.circumferenceMm());
        number(json, "easePercent", fit.easePercent());
    }

    static void number(JsonGenerator json, String member, double value) throws IOException {
        json.writeFieldName(member);
        Json.number(json, value);
    }
}
