package turnheel.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.Stranding;
import turnheel.model.pattern.StitchPatternElement;

/**
 * Stitch patterns as a person writes them, several parted by semicolons: {@code instep: 6+1} is a repeat of 6 and an edge of
 * 1, {@code leg: 8x12} a repeat of 8 stitches and 12 rows, {@code instep: 10+1 panel} a centred panel and
 * {@code instep: 10+1 panel 3} one with at least 3 plain stitches a side. {@code leg: 12x24 stranded 4} is worked in two
 * colours, with floats over at most 4 stitches.
 */
public final class StitchPatternText {

    private static final Pattern SHAPE = Pattern.compile(
            "\\s*(?<zone>[a-z]+)\\s*:\\s*(?<repeat>\\d{1,4})(?:\\s*\\+\\s*(?<edge>\\d{1,4}))?(?:\\s*[x×]\\s*(?<rows>\\d{1,4}))?"
                    + "(?<panel>\\s+panel(?:\\s+(?<filler>\\d{1,3}))?)?"
                    + "(?<stranded>\\s+stranded(?:\\s+(?<float>\\d{1,3}))?)?\\s*");
    private static final String PARTED = ";";

    private StitchPatternText() {
    }

    /** The text of these patterns; {@link #parse} reads it back. */
    public static String of(List<StitchPatternElement> elements) {
        return elements.stream().map(StitchPatternText::of).collect(Collectors.joining(PARTED + " "));
    }

    private static String of(StitchPatternElement element) {
        String panel = switch (element.getFit()) {
            case WHOLE_REPEATS -> "";
            case CENTRED_PANEL -> " panel " + element.getFewestFiller();
        };
        // joined, not formatted: a file has the same digits in every country
        return Literals.text(element.getZone()) + ": " + element.getRepeat() + "+" + element.getEdge() + "x"
                + element.getRows() + panel + (element.isStranded() ? " stranded" : "")
                + (element.getLongestFloat() == null ? "" : " " + element.getLongestFloat());
    }

    /**
     * The patterns that a text describes; none for an empty text.
     *
     * @throws IllegalArgumentException when it describes none; the message quotes the piece and says what would do
     */
    public static List<StitchPatternElement> parse(String text) {
        List<StitchPatternElement> elements = new ArrayList<>();
        if (!text.isBlank()) {
            for (String one : text.split(PARTED)) {
                elements.add(PartElements.stitchPattern(one(one)));
            }
        }
        return elements;
    }

    private static StitchPattern one(String text) {
        Matcher matcher = SHAPE.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "\"%s\" is not a stitch pattern; write a zone, the repeat and the edge, such as instep: 6+1 or leg: 8x12"
                            .formatted(text.strip()));
        }
        StitchPattern.Zone zone = Literals.parse(StitchPattern.Zone.class, matcher.group("zone"));
        StitchPattern.Fit fit = matcher.group("panel") == null ? StitchPattern.Fit.WHOLE_REPEATS
                : StitchPattern.Fit.CENTRED_PANEL;
        StitchPattern pattern = new StitchPattern(zone, number(matcher, "repeat", "1"), number(matcher, "edge", "0"),
                number(matcher, "rows", "1"), fit, number(matcher, "filler", "1"));
        if (matcher.group("stranded") == null) {
            return pattern;
        }
        String longest = matcher.group("float");
        return pattern.with(new Stranding(
                longest == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(longest))));
    }

    private static int number(Matcher matcher, String group, String otherwise) {
        return Integer.parseInt(Objects.requireNonNullElse(matcher.group(group), otherwise));
    }
}
