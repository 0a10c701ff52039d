package turnheel.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import turnheel.engine.design.StitchPattern;
import turnheel.model.Literals;
import turnheel.model.PartElements;
import turnheel.model.pattern.StitchPatternElement;

/**
 * Stitch patterns as they are written on the command line, several parted by semicolons: {@code instep: 6+1} is a repeat of
 * 6 and an edge of 1, {@code leg: 8x12} a repeat of 8 stitches and 12 rows, {@code instep: 10+1 panel} a centred panel and
 * {@code instep: 10+1 panel 3} one with at least 3 plain stitches a side.
 */
final class StitchPatternText {

    private static final Pattern SHAPE = Pattern.compile(
            "\\s*(?<zone>[a-z]+)\\s*:\\s*(?<repeat>\\d{1,4})(?:\\s*\\+\\s*(?<edge>\\d{1,4}))?(?:\\s*[x×]\\s*(?<rows>\\d{1,4}))?"
                    + "(?<panel>\\s+panel(?:\\s+(?<filler>\\d{1,3}))?)?\\s*");

    private StitchPatternText() {
    }

    static String of(turnheel.model.pattern.Pattern document) {
        return document.getStitchPatterns().stream().map(StitchPatternText::of).collect(Collectors.joining("; "));
    }

    private static String of(StitchPatternElement element) {
        String panel = switch (element.getFit()) {
            case WHOLE_REPEATS -> "";
            case CENTRED_PANEL -> " panel " + element.getFewestFiller();
        };
        return "%s: %d+%dx%d%s".formatted(Literals.text(element.getZone()), element.getRepeat(), element.getEdge(),
                element.getRows(), panel);
    }

    /** Replaces the stitch patterns of the document; an empty text takes them away. */
    static void write(turnheel.model.pattern.Pattern document, String given, String value) throws Refusal {
        List<StitchPatternElement> elements = new ArrayList<>();
        if (!value.isBlank()) {
            for (String one : value.split(";")) {
                elements.add(PartElements.stitchPattern(parse(given, one)));
            }
        }
        document.getStitchPatterns().clear();
        document.getStitchPatterns().addAll(elements);
    }

    private static StitchPattern parse(String given, String text) throws Refusal {
        Matcher matcher = SHAPE.matcher(text);
        if (!matcher.matches()) {
            throw new Refusal(Words.NOT_A_STITCH_PATTERN.with(given, text.strip()));
        }
        StitchPattern.Zone zone = Choice.of(given, matcher.group("zone"), StitchPattern.Zone.class);
        StitchPattern.Fit fit = matcher.group("panel") == null ? StitchPattern.Fit.WHOLE_REPEATS
                : StitchPattern.Fit.CENTRED_PANEL;
        try {
            return new StitchPattern(zone, number(matcher, "repeat", "1"), number(matcher, "edge", "0"),
                    number(matcher, "rows", "1"), fit, number(matcher, "filler", "1"));
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }

    private static int number(Matcher matcher, String group, String otherwise) {
        return Integer.parseInt(Objects.requireNonNullElse(matcher.group(group), otherwise));
    }
}
