package turnheel.engine.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a pair is made of, as far as somebody has decided it.
 *
 * @param yarns the main yarn first; none while it is not chosen, the metres are estimated all the same
 * @param colours which yarn a part is worked in, counted from 1; a part that is not named is worked in the main yarn
 * @param notions what else is needed, a line each
 * @param needle diameter of the needles; a size may have its own
 * @param swatch a weighed one replaces the estimate by geometry
 * @param margin what is added to the need of a pair, 0 to 100 %
 * @throws IllegalArgumentException outside these ranges, with more than {@link #MOST_YARNS} yarns, when a part is
 *     worked in a yarn that is not there, or a notion is blank or longer than {@link #LONGEST_NOTION}
 */
public record Materials(List<YarnLine> yarns, Map<ColourPlace, Integer> colours, List<String> notions,
        Optional<Length> needle, Optional<Swatch> swatch, Share margin) {

    /** Enough for swatch, repairs and a knitter looser than the sample: <em>common practice</em>. */
    public static final Share USUAL_MARGIN = new Share(10);

    /** What is woven in at each end of the yarn, in mm: <em>common practice</em>. */
    public static final double YARN_END_MM = 150;

    /** Every yarn has rows of its own. */
    public static final int MOST_YARNS = 6;
    public static final int MOST_NOTIONS = 40;
    /** In characters. */
    public static final int LONGEST_NOTION = 200;

    /** Nothing decided. */
    public static final Materials UNDECIDED = new Materials(List.of(), Map.of(), List.of(), Optional.empty(),
            Optional.empty(), USUAL_MARGIN);

    /** Metres or grams beyond this are a slip of the pen. */
    static final double MOST = 10_000;

    public Materials {
        yarns = List.copyOf(yarns);
        colours = inOrder(colours);
        notions = notions.stream().map(String::strip).toList();
        if (yarns.size() > MOST_YARNS) {
            throw new IllegalArgumentException("a pattern has at most %d yarns; here are %d".formatted(MOST_YARNS,
                    yarns.size()));
        }
        for (Map.Entry<ColourPlace, Integer> colour : colours.entrySet()) {
            if (colour.getValue() < 1 || colour.getValue() > yarns.size()) {
                throw new IllegalArgumentException("the %s is worked in yarn %d; the pattern has %d".formatted(
                        colour.getKey().name().toLowerCase(Locale.ROOT).replace('_', ' '), colour.getValue(),
                        yarns.size()));
            }
        }
        requireReadable(notions);
        needle.ifPresent(diameter -> Catalogue.NEEDLE.require(Role.INPUT, diameter));
        if (!(margin.percent() >= 0 && margin.percent() <= 100)) {
            throw new IllegalArgumentException("the yarn's margin must lie between 0 and 100 %%, not %s"
                    .formatted(margin));
        }
    }

    /** In the order of the places, so that the same materials always print alike. */
    private static Map<ColourPlace, Integer> inOrder(Map<ColourPlace, Integer> colours) {
        Map<ColourPlace, Integer> ordered = new EnumMap<>(ColourPlace.class);
        ordered.putAll(colours);
        return Collections.unmodifiableMap(ordered);
    }

    private static void requireReadable(List<String> notions) {
        if (notions.size() > MOST_NOTIONS) {
            throw new IllegalArgumentException("a pattern has at most %d notions; here are %d".formatted(MOST_NOTIONS,
                    notions.size()));
        }
        for (String notion : notions) {
            if (notion.isEmpty() || notion.length() > LONGEST_NOTION || notion.chars().anyMatch(c -> c < ' ')) {
                throw new IllegalArgumentException("a notion is one line of 1 to %d characters, not \"%s\"".formatted(
                        LONGEST_NOTION, notion.length() > LONGEST_NOTION ? notion.substring(0, LONGEST_NOTION) + "…"
                                : notion));
            }
        }
    }

    /** This yarn and the usual margin. */
    public static Materials of(Yarn yarn) {
        return UNDECIDED.with(yarn);
    }

    /** The yarn that everything is worked in for which no other is named. */
    public Optional<Yarn> yarn() {
        return yarns.stream().findFirst().map(YarnLine::yarn);
    }

    /** The number of the yarn that a place is worked in, counted from 1; empty where no one named it. */
    public OptionalInt colour(ColourPlace place) {
        Integer yarn = colours.get(place);
        return yarn == null ? OptionalInt.empty() : OptionalInt.of(yarn);
    }

    /** The same with this main yarn. */
    public Materials with(Yarn other) {
        List<YarnLine> lines = new ArrayList<>(yarns);
        if (lines.isEmpty()) {
            lines.add(YarnLine.of(other));
        } else {
            lines.set(0, new YarnLine(other, lines.getFirst().colour(), lines.getFirst().balls()));
        }
        return withYarns(lines);
    }

    public Materials with(Swatch other) {
        return withSwatch(Optional.of(other));
    }

    public Materials with(Share other) {
        return new Materials(yarns, colours, notions, needle, swatch, other);
    }

    /**
     * The same with so many balls of the main yarn.
     *
     * @throws java.util.NoSuchElementException when no yarn is chosen
     */
    public Materials withBalls(int stated) {
        List<YarnLine> lines = new ArrayList<>(yarns);
        lines.set(0, lines.getFirst().withBalls(stated));
        return withYarns(lines);
    }

    public Materials withYarns(List<YarnLine> others) {
        return new Materials(others, colours, notions, needle, swatch, margin);
    }

    public Materials withColours(Map<ColourPlace, Integer> others) {
        return new Materials(yarns, others, notions, needle, swatch, margin);
    }

    public Materials withNotions(List<String> others) {
        return new Materials(yarns, colours, others, needle, swatch, margin);
    }

    public Materials withNeedle(Optional<Length> other) {
        return new Materials(yarns, colours, notions, other, swatch, margin);
    }

    public Materials withSwatch(Optional<Swatch> other) {
        return new Materials(yarns, colours, notions, needle, other, margin);
    }
}
