package turnheel.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.cli.Table.Side;
import turnheel.engine.design.Part;
import turnheel.engine.grading.Graded;
import turnheel.engine.shaping.Place;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundFinder;
import turnheel.engine.shaping.RoundFinder.Slip;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.writing.PlaceText;
import turnheel.engine.writing.RoundText;

/** {@code find-round}: from the loops on the needles to the round just worked and the next; without a count the table. */
@Command(name = "find-round")
final class FindRoundVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--size", paramLabel = "SIZE", required = true)
    private String label;

    @Option(names = "--stitches", paramLabel = "N")
    private Integer stitches;

    @Option(names = "--open-yarn-overs", paramLabel = "K")
    private Integer openYarnOvers;

    FindRoundVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        requireCounts();
        Graded graded = pattern.complete(List.of(label));
        CellName.knownSize(graded.design(), label, pattern.name());
        RoundFinder finder = RoundFinder.of(Rounds.of(graded, graded.size(label)));
        Integer loops = stitches;
        List<Place> places = loops == null ? finder.table() : finder.find(loops, optional(openYarnOvers));
        List<Slip> slips = loops == null || !places.isEmpty() ? List.of() : finder.slips(loops);
        if (isJson()) {
            output().document(Json.document("turnheel-find-round/1", json -> write(places, slips, json)));
        } else {
            show(graded.design().title(), places, slips);
        }
        return Main.DONE;
    }

    private void requireCounts() throws Refusal {
        Integer loops = stitches;
        Integer open = openYarnOvers;
        if (loops == null && open != null) {
            throw new Refusal(Words.FIND_ROUND_NO_COUNT.text());
        }
        if (loops != null && loops < 1) {
            throw new Refusal(Words.FIND_ROUND_TOO_FEW.with("--stitches", loops, 1));
        }
        if (open != null && open < 0) {
            throw new Refusal(Words.FIND_ROUND_TOO_FEW.with("--open-yarn-overs", open, 0));
        }
    }

    private static OptionalInt optional(Integer number) {
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    private void show(String title, List<Place> places, List<Slip> slips) {
        output().line(Words.ROUNDS_TITLE.with(title, label).strip());
        output().line("");
        if (!places.isEmpty()) {
            output().lines(table(places).lines());
            return;
        }
        output().line(Words.FIND_ROUND_NONE.with(String.valueOf(stitches)));
        for (Slip slip : slips) {
            output().line(Words.FIND_ROUND_SLIP.with(slip.place().part().prefix(), rounds(slip.place()),
                    slip.place().stitches(), PlaceText.of(slip)));
        }
    }

    private static Table table(List<Place> places) {
        Table table = new Table(Side.LEFT, Side.RIGHT, Side.RIGHT, Side.RIGHT, Side.LEFT, Side.LEFT);
        table.row(Words.HEADING_PART.text(), Words.HEADING_ROUND.text(), Words.HEADING_STITCHES.text(),
                Words.HEADING_OPEN.text(), Words.HEADING_LOOK_FOR.text(), Words.HEADING_NEXT.text());
        for (Place place : places) {
            table.row(place.part().prefix(), rounds(place), Integer.toString(place.stitches()),
                    place.openYarnOvers() == 0 ? "" : Integer.toString(place.openYarnOvers()),
                    PlaceText.of(place.sign()), place.next().map(next -> next(place.part(), next)).orElse(""));
        }
        return table;
    }

    private static String rounds(Place place) {
        if (place.first().number() == 0) {
            return place.first().kind().word();
        }
        String first = Integer.toString(place.first().number());
        return place.rounds() == 1 ? first : first + "–" + place.last().number();
    }

    private static String next(Part part, Place.Next next) {
        Round round = next.round();
        String name = round.number() == 0 ? round.kind().word() : Integer.toString(round.number());
        return (next.part() == part ? "" : next.part().prefix() + " ") + name + ": " + RoundText.of(round);
    }

    private void write(List<Place> places, List<Slip> slips, JsonGenerator json) throws IOException {
        json.writeStringField("size", label);
        json.writeArrayFieldStart("places");
        for (Place place : places) {
            json.writeStartObject();
            writePlace(place, json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("slips");
        for (Slip slip : slips) {
            json.writeStartObject();
            json.writeStringField("slip", slip.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.writeNumberField("by", slip.stitches());
            writePlace(slip.place(), json);
            json.writeStringField("message", PlaceText.of(slip));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writePlace(Place place, JsonGenerator json) throws IOException {
        json.writeStringField("part", place.part().prefix());
        json.writeNumberField("from", place.first().number());
        json.writeNumberField("to", place.last().number());
        json.writeStringField("kind", place.first().kind().word());
        json.writeNumberField("stitches", place.stitches());
        json.writeNumberField("openYarnOvers", place.openYarnOvers());
        json.writeStringField("lookFor", PlaceText.of(place.sign()));
        Optional<Place.Next> next = place.next();
        if (next.isPresent()) {
            json.writeObjectFieldStart("next");
            json.writeStringField("part", next.get().part().prefix());
            json.writeNumberField("number", next.get().round().number());
            json.writeStringField("kind", next.get().round().kind().word());
            json.writeStringField("text", RoundText.of(next.get().round()));
            json.writeEndObject();
        }
    }
}
