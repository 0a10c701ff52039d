package turnheel.engine.writing;

import static turnheel.engine.design.Catalogue.EASE_REACHED;
import static turnheel.engine.design.Catalogue.FOOT_LENGTH;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.function.DoublePredicate;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/**
 * What somebody who knits or wears the sock should know. Source: domain § 11; where health is concerned, the wording
 * leaves the judgement to a clinician.
 *
 * @param sizes labels of the sizes that it concerns; empty when it concerns every sock
 */
public record Caution(Matter matter, List<String> sizes) {

    /** Below this ease around, in per cent, tightness becomes a warning: domain § 11. */
    public static final double TIGHT_PERCENT = -20;
    /**
     * Feet up to this length in mm count as a small child's. Our own line, near the median at five years: 173 mm for
     * girls, 174 mm for boys, in the open part of the US child survey of 1977.
     */
    private static final double SMALL_CHILD_MM = 175;

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.writing.cautions");

    /** What a caution is about. */
    public enum Matter {
        /** The sock is more than a fifth smaller than the foot. */
        TIGHT,
        /** Tight socks can harm some feet. */
        CIRCULATION,
        /** The sock is no medical garment. */
        NOT_MEDICAL,
        /** The soles slip. */
        SLIPPERY,
        /** Loose strands can catch small toes. */
        LOOSE_STRANDS
    }

    public Caution {
        sizes = List.copyOf(sizes);
    }

    /** Whether a sock of this ease around, in per cent of the foot, comes with a warning. */
    public static boolean isTight(double easePercent) {
        return easePercent < TIGHT_PERCENT;
    }

    /** The cautions that apply to a pattern, the most pressing first. */
    public static List<Caution> of(Graded graded) {
        List<Caution> cautions = new ArrayList<>();
        List<String> tight = sizes(graded, EASE_REACHED, Caution::isTight);
        if (!tight.isEmpty()) {
            cautions.add(new Caution(Matter.TIGHT, tight));
        }
        cautions.add(new Caution(Matter.CIRCULATION, List.of()));
        cautions.add(new Caution(Matter.NOT_MEDICAL, List.of()));
        cautions.add(new Caution(Matter.SLIPPERY, List.of()));
        List<String> small = sizes(graded, FOOT_LENGTH, length -> length <= SMALL_CHILD_MM);
        if (!small.isEmpty()) {
            cautions.add(new Caution(Matter.LOOSE_STRANDS, small));
        }
        return List.copyOf(cautions);
    }

    private static List<String> sizes(Graded graded, Parameter parameter, DoublePredicate concerns) {
        return graded.sizes().stream()
                .filter(size -> size.cell(parameter).filter(cell -> concerns.test(cell.value())).isPresent())
                .map(GradedSize::label).toList();
    }

    /** The caution in words. */
    public String sentence() {
        return new MessageFormat(WORDS.getString("caution." + matter.name()), Locale.ROOT)
                .format(new Object[] {String.join(", ", sizes)});
    }
}
