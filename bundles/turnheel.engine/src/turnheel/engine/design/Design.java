package turnheel.engine.design;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * One state of a pattern: everything that a designer decided, nothing that follows from it.
 *
 * @param title may be empty
 * @param stitchGauge stitches of the main fabric, as measured
 * @param roundGauge rounds of the main fabric, as measured
 * @param stitchPatterns at most one for each zone
 * @param materials what it is made of, as far as that is decided
 * @param lengths how the pattern says how far it is worked
 * @param sizes in the designer's order, smallest first as a rule
 * @param ownRows numbers that the designer has computed, in the designer's order
 * @throws IllegalArgumentException when there is no size, two sizes share an id or a label, two stitch patterns a
 *     zone or two own rows a key, or when there are more than {@link OwnRow#MOST} own rows
 */
public record Design(String title, Direction direction, Gauge stitchGauge, Gauge roundGauge, Toe toe, Heel heel, Leg leg,
        Cuff cuff, List<StitchPattern> stitchPatterns, Materials materials, Lengths lengths, List<Size> sizes,
        List<OwnRow> ownRows) {

    public Design {
        stitchPatterns = List.copyOf(stitchPatterns);
        sizes = List.copyOf(sizes);
        ownRows = List.copyOf(ownRows);
        requireOneForEachZone(stitchPatterns);
        OwnRow.requireDistinct(ownRows);
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("a pattern needs at least one size");
        }
        Set<String> ids = new HashSet<>();
        Set<String> labels = new HashSet<>();
        for (Size size : sizes) {
            if (!ids.add(size.id())) {
                throw new IllegalArgumentException("two sizes have the id \"%s\"".formatted(size.id()));
            }
            if (!labels.add(size.label())) {
                throw new IllegalArgumentException("two sizes have the label \"%s\"".formatted(size.label()));
            }
        }
    }

    /** A pattern whose lengths are said as usual, without rows of the designer's own. */
    public Design(String title, Direction direction, Gauge stitchGauge, Gauge roundGauge, Toe toe, Heel heel, Leg leg,
            Cuff cuff, List<StitchPattern> stitchPatterns, Materials materials, List<Size> sizes) {
        this(title, direction, stitchGauge, roundGauge, toe, heel, leg, cuff, stitchPatterns, materials, Lengths.USUAL,
                sizes, List.of());
    }

    /** A pattern whose materials nobody has decided yet. */
    public Design(String title, Direction direction, Gauge stitchGauge, Gauge roundGauge, Toe toe, Heel heel, Leg leg,
            Cuff cuff, List<StitchPattern> stitchPatterns, List<Size> sizes) {
        this(title, direction, stitchGauge, roundGauge, toe, heel, leg, cuff, stitchPatterns, Materials.UNDECIDED, sizes);
    }

    /** A plain pattern, in stocking stitch but for its cuff. */
    public Design(String title, Direction direction, Gauge stitchGauge, Gauge roundGauge, Toe toe, Heel heel, Leg leg,
            Cuff cuff, List<Size> sizes) {
        this(title, direction, stitchGauge, roundGauge, toe, heel, leg, cuff, List.of(), sizes);
    }

    /** The same pattern of other materials. */
    public Design withMaterials(Materials other) {
        return new Design(title, direction, stitchGauge, roundGauge, toe, heel, leg, cuff, stitchPatterns, other,
                lengths, sizes, ownRows);
    }

    /** The same pattern with its lengths said in another way. */
    public Design withLengths(Lengths other) {
        return new Design(title, direction, stitchGauge, roundGauge, toe, heel, leg, cuff, stitchPatterns, materials,
                other, sizes, ownRows);
    }

    /** The same pattern with these own rows in place of its own. */
    public Design withOwnRows(List<OwnRow> others) {
        return new Design(title, direction, stitchGauge, roundGauge, toe, heel, leg, cuff, stitchPatterns, materials,
                lengths, sizes, others);
    }

    private static void requireOneForEachZone(List<StitchPattern> patterns) {
        Set<StitchPattern.Zone> zones = new HashSet<>();
        for (StitchPattern pattern : patterns) {
            if (!zones.add(pattern.zone())) {
                throw new IllegalArgumentException("two stitch patterns lie on the %s".formatted(
                        pattern.zone().name().toLowerCase(Locale.ROOT)));
            }
        }
    }

    /** The stitch pattern worked on a zone, be it its own or that of the whole sock. */
    public Optional<StitchPattern> stitchPattern(StitchPattern.Zone zone) {
        return stitchPatterns.stream().filter(pattern -> pattern.zone() == zone || pattern.zone() == StitchPattern.Zone.ALL)
                .findFirst();
    }

    /**
     * The size with this label.
     *
     * @throws IllegalArgumentException when there is none; the message lists the labels
     */
    public Size size(String label) {
        return sizes.stream().filter(size -> size.label().equals(label)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no size \"%s\"; the sizes are %s".formatted(
                        label, String.join(", ", sizes.stream().map(Size::label).toList()))));
    }
}
