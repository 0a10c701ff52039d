package turnheel.cli;

import static turnheel.model.pattern.PatternPackage.Literals.ASYMMETRIC_TOE_ELEMENT__CAST_ON;
import static turnheel.model.pattern.PatternPackage.Literals.ASYMMETRIC_TOE_ELEMENT__INCREASE;
import static turnheel.model.pattern.PatternPackage.Literals.AFTERTHOUGHT_HEEL_ELEMENT__CAP;
import static turnheel.model.pattern.PatternPackage.Literals.AFTERTHOUGHT_HEEL_ELEMENT__LEAN;
import static turnheel.model.pattern.PatternPackage.Literals.CALF_LEG_ELEMENT__COUNT;
import static turnheel.model.pattern.PatternPackage.Literals.CALF_LEG_ELEMENT__LENGTH;
import static turnheel.model.pattern.PatternPackage.Literals.FLAP_HEEL_ELEMENT__EDGE;
import static turnheel.model.pattern.PatternPackage.Literals.FLAP_HEEL_ELEMENT__FABRIC;
import static turnheel.model.pattern.PatternPackage.Literals.FLAP_HEEL_ELEMENT__FLAP_LENGTH;
import static turnheel.model.pattern.PatternPackage.Literals.FLAP_HEEL_ELEMENT__PICK_UP;
import static turnheel.model.pattern.PatternPackage.Literals.FLAP_HEEL_ELEMENT__TURN;
import static turnheel.model.pattern.PatternPackage.Literals.LENGTHS_ELEMENT__CUFF;
import static turnheel.model.pattern.PatternPackage.Literals.LENGTHS_ELEMENT__FOOT;
import static turnheel.model.pattern.PatternPackage.Literals.LENGTHS_ELEMENT__LEG;
import static turnheel.model.pattern.PatternPackage.Literals.LENGTHS_ELEMENT__SNAP;
import static turnheel.model.pattern.PatternPackage.Literals.PATTERN__CUFF;
import static turnheel.model.pattern.PatternPackage.Literals.PATTERN__HEEL;
import static turnheel.model.pattern.PatternPackage.Literals.PATTERN__LEG;
import static turnheel.model.pattern.PatternPackage.Literals.PATTERN__TOE;
import static turnheel.model.pattern.PatternPackage.Literals.RIB_CUFF_ELEMENT__MAY_ADJUST;
import static turnheel.model.pattern.PatternPackage.Literals.ROUND_TOE_ELEMENT__CAST_ON;
import static turnheel.model.pattern.PatternPackage.Literals.ROUND_TOE_ELEMENT__INCREASE;
import static turnheel.model.pattern.PatternPackage.Literals.ROUND_TOE_ELEMENT__LEAN;
import static turnheel.model.pattern.PatternPackage.Literals.SHORT_ROW_HEEL_ELEMENT__TURN;
import static turnheel.model.pattern.PatternPackage.Literals.SHORT_ROW_TOE_ELEMENT__TURN;
import static turnheel.model.pattern.PatternPackage.Literals.STAR_TOE_ELEMENT__CAST_ON;
import static turnheel.model.pattern.PatternPackage.Literals.STAR_TOE_ELEMENT__INCREASE;
import static turnheel.model.pattern.PatternPackage.Literals.STAR_TOE_ELEMENT__LEAN;
import static turnheel.model.pattern.PatternPackage.Literals.STRAIGHT_LEG_ELEMENT__COUNT;
import static turnheel.model.pattern.PatternPackage.Literals.STRAIGHT_LEG_ELEMENT__LENGTH;
import static turnheel.model.pattern.PatternPackage.Literals.WEDGE_TOE_ELEMENT__CAST_ON;
import static turnheel.model.pattern.PatternPackage.Literals.WEDGE_TOE_ELEMENT__INCREASE;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.model.Door;
import turnheel.model.Literals;
import turnheel.model.PartElements;
import turnheel.model.StitchPatternText;
import turnheel.model.pattern.LengthsElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.StitchPatternElement;

/**
 * What a designer decides for the whole pattern: an option of {@code new}, a name of {@code set}. The words for the
 * kinds of part are those of the command line; the others are those of the pattern file. Kinds of part come before what is
 * decided for them, and the swatch before the gauge that may be taken from it, so that {@code new} can apply them in this
 * order.
 */
enum PatternOption {
    TITLE, DIRECTION, YARN, COLOUR, NOTION, NEEDLE, SWATCH, GAUGE, TOE, HEEL, LEG, CUFF, INCREASE, CAST_ON, LEAN, TURN,
    HEEL_TURN, FLAP, FLAP_FABRIC, FLAP_EDGE, PICK_UP, CAP, LENGTH, LEG_COUNT, CUFF_ADJUSTS, STITCH_PATTERN,
    STITCH_PATTERN_ROWS, FOOT_LENGTH_MODE, LEG_LENGTH_MODE, CUFF_LENGTH_MODE, SNAP;

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static List<String> words() {
        return Arrays.stream(values()).map(PatternOption::word).toList();
    }

    static Optional<PatternOption> of(String word) {
        return Arrays.stream(values()).filter(option -> option.word().equals(word)).findFirst();
    }

    /** Whether there need not be any. */
    boolean mayBeEmpty() {
        return EnumSet.of(TITLE, STITCH_PATTERN_ROWS, YARN, COLOUR, NOTION, NEEDLE, SWATCH).contains(this);
    }

    /** What the document says, as it can be written on the command line; empty where its parts know no such choice. */
    String read(Pattern document) {
        return switch (this) {
            case TITLE -> Objects.requireNonNullElse(document.getTitle(), "");
            case DIRECTION -> Literals.text(document.getDirection());
            case GAUGE -> GaugePair.of(document).toString();
            case TOE -> kind(document, PATTERN__TOE);
            case HEEL -> kind(document, PATTERN__HEEL);
            case LEG -> kind(document, PATTERN__LEG);
            case CUFF -> CuffText.of(document.getCuff());
            case STITCH_PATTERN -> StitchPatternText.of(document.getStitchPatterns());
            case STITCH_PATTERN_ROWS -> PatternRowsText.of(document.getStitchPatterns());
            case YARN -> MaterialsText.yarns(Door.materials(document));
            case COLOUR -> MaterialsText.colours(Door.materials(document));
            case NOTION -> MaterialsText.notions(Door.materials(document));
            case NEEDLE -> MaterialsText.needle(Door.materials(document));
            case SWATCH -> SwatchText.of(Door.materials(document));
            case INCREASE, CAST_ON, LEAN, TURN, HEEL_TURN, FLAP, FLAP_FABRIC, FLAP_EDGE, PICK_UP, CAP, LENGTH,
                    LEG_COUNT, CUFF_ADJUSTS, FOOT_LENGTH_MODE, LEG_LENGTH_MODE, CUFF_LENGTH_MODE, SNAP -> places(document)
                    .map(place -> AttributeText.of(place.attribute(), place.value()))
                    .distinct().collect(Collectors.joining(" "));
        };
    }

    /**
     * Changes the document.
     *
     * @param given how the person named this option, for messages: {@code --toe} or {@code toe}
     */
    void write(Pattern document, String given, String value) throws Refusal {
        switch (this) {
            case TITLE -> document.setTitle(value);
            case DIRECTION -> document.setDirection(Choice.of(given, value, Direction.class));
            case GAUGE -> GaugePair.parse(given, value, Door.materials(document).swatch()).writeTo(document);
            case TOE -> PartKind.write(document, PATTERN__TOE, given, value);
            case HEEL -> PartKind.write(document, PATTERN__HEEL, given, value);
            case LEG -> PartKind.write(document, PATTERN__LEG, given, value);
            case CUFF -> CuffText.write(document, given, value);
            case STITCH_PATTERN -> writeStitchPatterns(document, given, value);
            case STITCH_PATTERN_ROWS -> PatternRowsText.write(document.getStitchPatterns(), given, value);
            case YARN -> write(document, MaterialsText.withYarns(Door.materials(document), given, value));
            case COLOUR -> write(document, MaterialsText.withColours(Door.materials(document), given, value));
            case NOTION -> write(document, MaterialsText.withNotions(Door.materials(document), given, value));
            case NEEDLE -> write(document, MaterialsText.withNeedle(Door.materials(document), given, value));
            case SWATCH -> write(document, SwatchText.with(Door.materials(document), given, value));
            case INCREASE, CAST_ON, LEAN, TURN, HEEL_TURN, FLAP, FLAP_FABRIC, FLAP_EDGE, PICK_UP, CAP, LENGTH,
                    LEG_COUNT, CUFF_ADJUSTS -> writeChoice(document, given, value);
            case FOOT_LENGTH_MODE, LEG_LENGTH_MODE, CUFF_LENGTH_MODE, SNAP -> {
                document.setLengths(lengths(document));
                writeChoice(document, given, value);
            }
        }
    }

    private static void write(Pattern document, Materials materials) {
        document.setMaterials(PartElements.materials(materials));
    }

    private static void writeStitchPatterns(Pattern document, String given, String value) throws Refusal {
        try {
            List<StitchPatternElement> elements = StitchPatternText.parse(value);
            PatternRowsText.keep(document.getStitchPatterns(), elements);
            document.getStitchPatterns().clear();
            document.getStitchPatterns().addAll(elements);
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }

    private void writeChoice(Pattern document, String given, String value) throws Refusal {
        List<Place> places = places(document).toList();
        if (places.isEmpty()) {
            throw new Refusal(Words.CHOICE_WITHOUT_PART.with(given, String.join(", ",
                    Arrays.stream(attributes()).map(attribute -> attribute.getEContainingClass())
                            .map(kind -> kind.getName().replace("Element", "")).distinct().toList())));
        }
        for (Place place : places) {
            place.element().eSet(place.attribute(), AttributeText.parse(given, place.attribute(), value));
        }
    }

    private static String kind(Pattern document, EReference part) {
        return PartKind.word(part, ((EObject) document.eGet(part)).eClass());
    }

    /** How the document says lengths, or a new element that says them as usual. */
    private static LengthsElement lengths(Pattern document) {
        return Objects.requireNonNullElseGet(document.getLengths(), () -> PartElements.lengths(Lengths.USUAL));
    }

    /** An attribute of a part that is in the document. */
    private record Place(EObject element, EAttribute attribute) {
        Object value() {
            return element.eGet(attribute);
        }
    }

    private Stream<Place> places(Pattern document) {
        Stream<EObject> parts = Stream.of(PATTERN__TOE, PATTERN__HEEL, PATTERN__LEG, PATTERN__CUFF)
                .map(part -> (EObject) document.eGet(part));
        return Stream.concat(parts, Stream.of(lengths(document)))
                .flatMap(element -> Arrays.stream(attributes())
                        .filter(attribute -> attribute.getEContainingClass().isInstance(element))
                        .map(attribute -> new Place(element, attribute)));
    }

    private EAttribute[] attributes() {
        return switch (this) {
            case INCREASE -> new EAttribute[] {ROUND_TOE_ELEMENT__INCREASE, WEDGE_TOE_ELEMENT__INCREASE,
                    STAR_TOE_ELEMENT__INCREASE, ASYMMETRIC_TOE_ELEMENT__INCREASE};
            case CAST_ON -> new EAttribute[] {ROUND_TOE_ELEMENT__CAST_ON, WEDGE_TOE_ELEMENT__CAST_ON,
                    STAR_TOE_ELEMENT__CAST_ON, ASYMMETRIC_TOE_ELEMENT__CAST_ON};
            case LEAN -> new EAttribute[] {ROUND_TOE_ELEMENT__LEAN, STAR_TOE_ELEMENT__LEAN,
                    AFTERTHOUGHT_HEEL_ELEMENT__LEAN};
            case TURN -> new EAttribute[] {SHORT_ROW_TOE_ELEMENT__TURN, SHORT_ROW_HEEL_ELEMENT__TURN};
            case HEEL_TURN -> new EAttribute[] {FLAP_HEEL_ELEMENT__TURN};
            case FLAP -> new EAttribute[] {FLAP_HEEL_ELEMENT__FLAP_LENGTH};
            case FLAP_FABRIC -> new EAttribute[] {FLAP_HEEL_ELEMENT__FABRIC};
            case FLAP_EDGE -> new EAttribute[] {FLAP_HEEL_ELEMENT__EDGE};
            case PICK_UP -> new EAttribute[] {FLAP_HEEL_ELEMENT__PICK_UP};
            case CAP -> new EAttribute[] {AFTERTHOUGHT_HEEL_ELEMENT__CAP};
            case LENGTH -> new EAttribute[] {STRAIGHT_LEG_ELEMENT__LENGTH, CALF_LEG_ELEMENT__LENGTH};
            case LEG_COUNT -> new EAttribute[] {STRAIGHT_LEG_ELEMENT__COUNT, CALF_LEG_ELEMENT__COUNT};
            case CUFF_ADJUSTS -> new EAttribute[] {RIB_CUFF_ELEMENT__MAY_ADJUST};
            case FOOT_LENGTH_MODE -> new EAttribute[] {LENGTHS_ELEMENT__FOOT};
            case LEG_LENGTH_MODE -> new EAttribute[] {LENGTHS_ELEMENT__LEG};
            case CUFF_LENGTH_MODE -> new EAttribute[] {LENGTHS_ELEMENT__CUFF};
            case SNAP -> new EAttribute[] {LENGTHS_ELEMENT__SNAP};
            case TITLE, DIRECTION, GAUGE, TOE, HEEL, LEG, CUFF, STITCH_PATTERN, STITCH_PATTERN_ROWS, YARN, COLOUR,
                    NOTION, NEEDLE, SWATCH -> new EAttribute[0];
        };
    }
}
