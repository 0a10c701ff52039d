package turnheel.engine.writing;

import static turnheel.engine.writing.Phrase.filled;
import static turnheel.engine.writing.Phrase.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Length;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.YarnLine;
import turnheel.engine.design.YarnRows;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.instruction.Sized;
import turnheel.engine.wording.Vocabulary;
import turnheel.engine.yarn.Needles;

/** What a pair is made of: yarns with their amounts and parts, needles, notions. */
final class MaterialLines {

    private final Graded graded;
    private final Design design;
    private final Materials materials;
    private final Vocabulary vocabulary;
    private final Lengths lengths;

    MaterialLines(Graded graded, Vocabulary vocabulary, Lengths lengths) {
        this.graded = graded;
        this.design = graded.design();
        this.materials = design.materials();
        this.vocabulary = vocabulary;
        this.lengths = lengths;
    }

    /** One paragraph each. */
    List<List<Piece>> lines() {
        List<List<Piece>> lines = new ArrayList<>();
        List<YarnLine> yarns = materials.yarns();
        if (yarns.isEmpty()) {
            whole(Catalogue.YARN_METRES).ifPresent(metres ->
                    lines.add(filled(vocabulary.phrase("front.yarn.metres"), metres)));
        }
        for (int yarn = 0; yarn < yarns.size(); yarn++) {
            lines.add(yarn(yarns.get(yarn), yarn + 1, yarns.size() > 1));
        }
        needles().ifPresent(needles -> lines.add(filled(vocabulary.phrase("front.needles"), needles)));
        lines.add(filled(vocabulary.phrase("front.notions"), words(notions())));
        return lines;
    }

    /** A single yarn takes what the whole sock takes. */
    private List<Piece> yarn(YarnLine line, int number, boolean several) {
        YarnRows rows = Catalogue.YARN_COLOURS.get(number - 1);
        List<Piece> head = words(several
                ? vocabulary.phrase("front.yarn.numbered").replace("{0}", Integer.toString(number))
                : vocabulary.phrase("front.yarn"));
        Phrase text = new Phrase().add(filled(vocabulary.phrase("front.yarn.ball"), head, words(name(line)),
                words(lengths.decimals(line.yarn().metresPerBall(), 1)),
                words(lengths.decimals(line.yarn().gramsPerBall(), 1))));
        amount("front.yarn.balls", several ? rows.balls() : Catalogue.YARN_BALLS, text);
        amount("front.yarn.length", several ? rows.metres() : Catalogue.YARN_METRES, text);
        amount("front.yarn.weight", several ? rows.grams() : Catalogue.YARN_GRAMS, text);
        String places = places(number);
        if (!places.isEmpty()) {
            text.add(filled(vocabulary.phrase("front.yarn.places"), words(places)));
        }
        return text.pieces();
    }

    private String name(YarnLine line) {
        String name = FrontMatter.oneLine(line.yarn().name());
        String colour = FrontMatter.oneLine(line.colour());
        return colour.isEmpty() ? name
                : vocabulary.phrase("front.yarn.colour").replace("{0}", name).replace("{1}", colour).strip();
    }

    private void amount(String key, Parameter parameter, Phrase text) {
        each(parameter).map(amounts -> amounts.map(amount -> (int) Math.ceil(amount))).ifPresent(whole ->
                text.add(filled(InstructionText.counted(vocabulary, key, whole), List.of(Piece.Values.of(whole)))));
    }

    private String places(int number) {
        return String.join(vocabulary.phrase("list.separator"), materials.colours().entrySet().stream()
                .filter(place -> place.getValue() == number).map(Map.Entry::getKey)
                .map(place -> vocabulary.phrase("place." + place)).toList());
    }

    /** An amount of yarn, rounded up to whole units: it must be enough. */
    private Optional<List<Piece>> whole(Parameter parameter) {
        return each(parameter).map(amounts ->
                List.of(Piece.Values.of(amounts.map(amount -> Long.toString((long) Math.ceil(amount))))));
    }

    private Optional<Sized<Double>> each(Parameter parameter) {
        List<Optional<Double>> each = graded.sizes().stream()
                .map(size -> size.cell(parameter).map(Cell::value)).toList();
        return each.stream().anyMatch(Optional::isPresent) ? Optional.of(Sized.ofOptionals(each)) : Optional.empty();
    }

    private Optional<List<Piece>> needles() {
        return each(Catalogue.NEEDLE).map(each -> List.of(Piece.Values.of(each.map(mm ->
                Needles.usNumber(Length.ofMm(mm))
                        .map(number -> vocabulary.phrase("needle.us").replace("{0}", lengths.decimals(mm, 2))
                                .replace("{1}", number))
                        .orElseGet(() -> vocabulary.phrase("needle").replace("{0}", lengths.decimals(mm, 2)))))));
    }

    private String notions() {
        List<String> notions = new ArrayList<>(materials.notions().stream().map(FrontMatter::oneLine).toList());
        notions.add(vocabulary.phrase("notion.markers"));
        notions.add(vocabulary.phrase("notion.needle"));
        boolean toeUp = design.direction() == Direction.TOE_UP;
        boolean provisional = toeUp ? design.toe() instanceof ShortRowToe : design.cuff() instanceof HemCuff;
        if (provisional || design.heel() instanceof AfterthoughtHeel) {
            notions.add(vocabulary.phrase("notion.wasteYarn"));
        }
        return String.join(vocabulary.phrase("list.separator"), notions);
    }
}
