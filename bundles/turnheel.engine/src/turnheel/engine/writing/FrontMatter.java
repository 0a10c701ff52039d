package turnheel.engine.writing;

import static turnheel.engine.writing.Phrase.filled;
import static turnheel.engine.writing.Phrase.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.instruction.Sized;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.Vocabulary;

/** What stands before the instructions: title, sizes, measurements, materials and gauge. */
final class FrontMatter {

    private final Graded graded;
    private final Design design;
    private final Vocabulary vocabulary;
    private final Lengths lengths;

    FrontMatter(Graded graded, HouseStyle style, Vocabulary vocabulary) {
        this.graded = graded;
        this.design = graded.design();
        this.vocabulary = vocabulary;
        this.lengths = new Lengths(style);
    }

    List<Content> contents() {
        List<Content> contents = new ArrayList<>();
        String title = oneLine(design.title());
        contents.add(new Content.Prose(Role.TITLE,
                words(title.isEmpty() ? vocabulary.phrase("front.untitled") : title)));
        contents.add(new Content.SizeList(graded.sizes().stream().map(size -> oneLine(size.label())).toList()));
        measured("front.toFit", Catalogue.FOOT_CIRCUMFERENCE, Catalogue.FOOT_LENGTH, contents);
        measured("front.finished", Catalogue.FINISHED_CIRCUMFERENCE, Catalogue.FINISHED_LENGTH, contents);
        new MaterialLines(graded, vocabulary, lengths).lines()
                .forEach(line -> contents.add(new Content.Prose(Role.MATERIAL, line)));
        contents.add(new Content.Prose(Role.GAUGE, gauge()));
        return contents;
    }

    /** What a person typed, in one line: a line end in it must not begin a paragraph. */
    static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
    }

    private void measured(String key, Parameter around, Parameter along, List<Content> contents) {
        length(around).ifPresent(first -> length(along).ifPresent(second -> contents.add(new Content.Prose(
                Role.MEASUREMENT, filled(vocabulary.phrase(key), lengths.of(first), lengths.of(second))))));
    }

    private Optional<Sized<Double>> length(Parameter parameter) {
        List<Optional<Double>> each = graded.sizes().stream().map(size -> size.cell(parameter).map(
                Cell::value)).toList();
        return each.stream().anyMatch(Optional::isPresent) ? Optional.of(Sized.ofOptionals(each)) : Optional.empty();
    }

    /** As it was measured; where sizes have gauges of their own, over 10 cm. */
    private List<Piece> gauge() {
        boolean own = design.sizes().stream().anyMatch(size -> size.inputs().containsKey(Catalogue.GAUGE_STITCHES.key())
                || size.inputs().containsKey(Catalogue.GAUGE_ROUNDS.key()));
        List<Piece> word = words(vocabulary.phrase("front.gauge"));
        if (own) {
            return filled(vocabulary.phrase("front.gauge.together"), word, perSpan(Catalogue.GAUGE_STITCHES),
                    perSpan(Catalogue.GAUGE_ROUNDS), over(new Length(10, LengthUnit.CENTIMETRE)));
        }
        Gauge stitches = design.stitchGauge();
        Gauge rounds = design.roundGauge();
        boolean together = stitches.over().equals(rounds.over());
        return filled(vocabulary.phrase(together ? "front.gauge.together" : "front.gauge.apart"), word,
                words(lengths.decimals(stitches.count(), 2)), words(lengths.decimals(rounds.count(), 2)),
                over(stitches.over()), over(rounds.over()));
    }

    private List<Piece> over(Length length) {
        return words(lengths.decimals(length.amount(), 2) + " " + length.unit().symbol());
    }

    private List<Piece> perSpan(Parameter gauge) {
        return length(gauge).<List<Piece>>map(each ->
                List.of(Piece.Values.of(each.map(count -> lengths.decimals(count, 2))))).orElse(List.of());
    }
}
