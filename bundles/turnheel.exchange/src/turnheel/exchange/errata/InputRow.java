package turnheel.exchange.errata;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import turnheel.engine.comparing.Comparison;
import turnheel.engine.comparing.InputChange;
import turnheel.engine.comparing.InputChange.Aspect;
import turnheel.engine.design.Design;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Quantity;
import turnheel.exchange.imprint.MaterialWords;
import turnheel.exchange.imprint.PartWords;

/**
 * A changed input in words.
 *
 * @param key that of a measurement or override, such as {@code heel.pickUp}, else a word such as {@code heel}
 * @param what its label
 * @param size the label of the size that it concerns, or the word for all
 * @param before what it was; the word for the rule or default where one held
 * @param after what it is
 */
public record InputRow(String key, String what, String size, String before, String after) {

    /** All of them, those of the whole pattern first. */
    public static List<InputRow> of(Comparison comparison) {
        Design before = comparison.before().design();
        Design after = comparison.after().design();
        return comparison.inputs().stream().map(change -> switch (change) {
            case InputChange.OfSize(var parameter, String size, var was, var is) ->
                new InputRow(parameter.key().name(), parameter.label(), size, said(was), said(is));
            case InputChange.OfPattern(Aspect aspect) -> of(aspect, said(aspect, before), said(aspect, after));
        }).toList();
    }

    private static InputRow of(Aspect aspect, String before, String after) {
        // rows of a stitch pattern, for example, are too long for a cell
        String told = before.equals(after) ? Words.text("details", after) : after;
        return new InputRow(Words.text("key." + aspect), Words.text("aspect." + aspect), Words.text("all"), before, told);
    }

    private static String said(Optional<Quantity> quantity) {
        return quantity.map(Quantity::toString).orElseGet(() -> Words.text("byRule"));
    }

    private static String said(Aspect aspect, Design design) {
        String said = switch (aspect) {
            case TITLE -> design.title();
            case DIRECTION -> PartWords.direction(design.direction());
            case STITCH_GAUGE -> PartWords.stitchGauge(design.stitchGauge());
            case ROUND_GAUGE -> PartWords.roundGauge(design.roundGauge());
            case TOE -> PartWords.toe(design.toe(), design.direction());
            case HEEL -> PartWords.heel(design.heel(), design.direction());
            case LEG -> PartWords.leg(design.leg());
            case CUFF -> PartWords.cuff(design.cuff());
            case STITCH_PATTERNS -> joined(design.stitchPatterns().stream().map(PartWords::stitchPattern));
            case MATERIALS -> materials(design.materials());
            case LENGTHS -> PartWords.lengths(design.lengths());
            case OWN_ROWS -> joined(design.ownRows().stream()
                    .map(row -> Words.text("ownRow", row.label(), row.formula())));
        };
        return said.isBlank() ? Words.text("none") : said;
    }

    private static String materials(Materials materials) {
        Stream<String> yarns = materials.yarns().stream().map(MaterialWords::yarn);
        Stream<String> others = Stream.of(Optional.of(MaterialWords.colours(materials)),
                materials.needle().map(MaterialWords::needle), materials.swatch().map(MaterialWords::swatch))
                .flatMap(Optional::stream);
        return joined(Stream.of(yarns, others, materials.notions().stream()).flatMap(texts -> texts));
    }

    private static String joined(Stream<String> texts) {
        return texts.filter(text -> !text.isBlank()).collect(Collectors.joining("; "));
    }
}
