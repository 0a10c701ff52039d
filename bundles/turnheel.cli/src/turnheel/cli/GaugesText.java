package turnheel.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import com.fasterxml.jackson.core.JsonGenerator;

import turnheel.cli.Table.Side;
import turnheel.engine.design.Unit;
import turnheel.engine.grading.GaugeTable;
import turnheel.engine.grading.GaugeTable.AtGauge;
import turnheel.engine.grading.GaugeTable.Closest;
import turnheel.engine.grading.GaugeTable.Printed;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.SizeFit;
import turnheel.engine.writing.Caution;

/** The pattern over gauge and size, a table for each question. */
record GaugesText(Graded graded, GaugeTable table) {

    private static final String PRINTED = "*";
    private static final String TIGHT = "!";

    static GaugesText of(Graded graded) {
        return new GaugesText(graded, GaugeTable.of(graded));
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        add(lines, Words.GAUGES_COUNTS, size -> size.regraded().map(fit -> Integer.toString(fit.count())));
        add(lines, Words.GAUGES_CIRCUMFERENCE, size -> size.printed().map(it -> millimetres(it.circumferenceMm())));
        add(lines, Words.GAUGES_FITS, size -> size.printed().map(it -> millimetres(it.fitsFootMm())));
        add(lines, Words.GAUGES_CLOSEST, size -> size.closest().map(GaugesText::closest));
        lines.add(Words.GAUGES_LEGEND.text());
        return lines;
    }

    private void add(List<String> lines, Words question, Function<AtGauge, Optional<String>> cell) {
        lines.add(question.text());
        lines.add("");
        List<Side> sides = new ArrayList<>(List.of(Side.RIGHT));
        List<String> heading = new ArrayList<>(List.of(Words.HEADING_GAUGE.text()));
        graded.sizes().stream().map(GradedSize::label).forEach(label -> {
            sides.add(Side.RIGHT);
            heading.add(label);
        });
        Table rows = new Table(sides).row(heading);
        for (GaugeTable.Row gauge : table.rows()) {
            List<String> row = new ArrayList<>(List.of(Figures.of(gauge.stitches(), Unit.PER_100_MM)
                    + (gauge.isPrinted() ? PRINTED : " ")));
            gauge.sizes().forEach(size -> row.add(cell.apply(size).orElse(Figures.NONE)));
            rows.row(row);
        }
        lines.addAll(rows.lines());
        lines.add("");
    }

    private static String millimetres(double length) {
        return Figures.of(length, Unit.MILLIMETRES);
    }

    private static String closest(Closest closest) {
        return Words.GAUGES_CLOSEST_SIZE.with(closest.size(), Figures.of(closest.easePercent(), Unit.PERCENT))
                + (Caution.isTight(closest.easePercent()) ? TIGHT : "");
    }

    void write(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("gauges");
        for (GaugeTable.Row gauge : table.rows()) {
            json.writeStartObject();
            OptionsText.number(json, "stitches", gauge.stitches());
            json.writeBooleanField("isPrinted", gauge.isPrinted());
            json.writeArrayFieldStart("sizes");
            for (AtGauge size : gauge.sizes()) {
                json.writeStartObject();
                json.writeStringField("size", size.size());
                write(size, json);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void write(AtGauge size, JsonGenerator json) throws IOException {
        if (size.regraded().isPresent()) {
            SizeFit fit = size.regraded().get();
            json.writeObjectFieldStart("regraded");
            OptionsText.fit(json, fit);
            json.writeEndObject();
        }
        if (size.printed().isPresent()) {
            Printed printed = size.printed().get();
            json.writeObjectFieldStart("printed");
            OptionsText.number(json, "circumferenceMm", printed.circumferenceMm());
            OptionsText.number(json, "fitsFootMm", printed.fitsFootMm());
            json.writeEndObject();
        }
        if (size.closest().isPresent()) {
            Closest closest = size.closest().get();
            json.writeObjectFieldStart("closest");
            json.writeStringField("size", closest.size());
            OptionsText.number(json, "easePercent", closest.easePercent());
            json.writeEndObject();
        }
    }
}
