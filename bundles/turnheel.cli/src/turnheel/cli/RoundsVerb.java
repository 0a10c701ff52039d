package turnheel.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.cli.Table.Side;
import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Query;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.term.Notation;
import turnheel.engine.writing.RoundText;
import turnheel.engine.yarn.LegFromYarn;

/** {@code rounds}: every round of every part of one size, or those of the leg that the yarn left is enough for. */
@Command(name = "rounds")
final class RoundsVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--size", paramLabel = "SIZE", required = true)
    private String label;

    @Option(names = "--grams-left", paramLabel = "GRAMS")
    private Double gramsLeft;

    RoundsVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        Graded graded = pattern.complete(List.of(label));
        CellName.knownSize(graded.design(), label, pattern.name());
        if (gramsLeft != null) {
            return legFromYarn(graded, gramsLeft);
        }
        List<PartRounds> parts = Rounds.of(graded, graded.size(label));
        if (isJson()) {
            output().document(Json.document("turnheel-rounds/1", json -> write(parts, json)));
        } else {
            output().line(Words.ROUNDS_TITLE.with(graded.design().title(), label).strip());
            parts.forEach(part -> output().lines(lines(part)));
        }
        List<Query> ofSize = Checks.of(graded).stream().filter(query -> query.sizes().contains(label)).toList();
        return Verdict.noted(ofSize, output(), pattern.name());
    }

    private int legFromYarn(Graded graded, double grams) throws Refusal {
        OptionalInt rounds;
        try {
            rounds = LegFromYarn.rounds(graded, label, grams);
        } catch (IllegalArgumentException outOfRange) {
            throw new Refusal(Words.GRAMS_LEFT_RANGE.with(pattern.name(), outOfRange.getMessage()));
        }
        if (rounds.isEmpty()) {
            throw new Refusal(Words.GRAMS_LEFT_NO_YARN.with(pattern.name()));
        }
        if (isJson()) {
            output().document(Json.document("turnheel-yarn-left/1", json -> {
                json.writeStringField("size", label);
                json.writeNumberField("gramsLeft", grams);
                json.writeNumberField("legRounds", rounds.getAsInt());
            }));
        } else {
            output().line(Words.GRAMS_LEFT.with(Notation.number(grams), rounds.getAsInt(), label));
        }
        return Main.DONE;
    }

    private static List<String> lines(PartRounds part) {
        List<String> lines = new ArrayList<>(List.of("", part.part().prefix()));
        if (part.rounds().isEmpty()) {
            lines.add(Words.ROUNDS_NONE.text());
            return lines;
        }
        Table table = new Table(Side.RIGHT, Side.RIGHT, Side.RIGHT, Side.LEFT, Side.LEFT);
        table.row(Words.HEADING_ROUND.text(), Words.HEADING_STITCHES.text(), Words.HEADING_OPEN.text(),
                Words.HEADING_KIND.text(), Words.HEADING_TEXT.text());
        for (Round round : part.rounds()) {
            table.row(positive(round.number()), Integer.toString(round.stitches()), positive(round.openYarnOvers()),
                    round.kind().word(), RoundText.of(round));
        }
        lines.addAll(table.lines());
        return lines;
    }

    private static String positive(int number) {
        return number == 0 ? "" : Integer.toString(number);
    }

    private void write(List<PartRounds> parts, JsonGenerator json) throws IOException {
        json.writeStringField("size", label);
        json.writeArrayFieldStart("parts");
        for (PartRounds part : parts) {
            json.writeStartObject();
            json.writeStringField("part", part.part().prefix());
            json.writeArrayFieldStart("rounds");
            for (Round round : part.rounds()) {
                json.writeStartObject();
                json.writeNumberField("number", round.number());
                json.writeStringField("kind", round.kind().word());
                json.writeNumberField("stitches", round.stitches());
                json.writeNumberField("openYarnOvers", round.openYarnOvers());
                json.writeStringField("text", RoundText.of(round));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
