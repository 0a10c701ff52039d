package turnheel.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
import turnheel.model.Literals;

/**
 * Yarns, colours, notions and needle as they are written on the command line, several parted by semicolons:
 * {@code Tidal Four: 200m/50g}, with {@code colour slate}, {@code category 1} and {@code 2 balls} after it where they are
 * known; {@code heel: 2} is a heel in the second yarn.
 */
final class MaterialsText {

    private static final String NUMBER = "(\\d{1,5}(?:\\.\\d{1,4})?)";
    private static final Pattern YARN = Pattern.compile("(?:(?<name>[^:]*):)?\\s*" + NUMBER + "\\s*m\\s*/\\s*" + NUMBER
            + "\\s*g(?:,?\\s+colour\\s+(?<colour>[^,]+?))?(?:,?\\s+category\\s+(?<category>\\d))?"
            + "(?:,?\\s+(?<balls>\\d{1,3})\\s+balls?)?\\s*");
    private static final Pattern COLOUR = Pattern.compile("\\s*(?<place>[a-z-]+)\\s*:\\s*(?<yarn>\\d{1,3})\\s*");
    private static final String PARTED = ";";

    private MaterialsText() {
    }

    static String yarns(Materials materials) {
        return materials.yarns().stream().map(MaterialsText::yarn).collect(Collectors.joining(PARTED + " "));
    }

    private static String yarn(YarnLine line) {
        Yarn yarn = line.yarn();
        StringBuilder text = new StringBuilder(yarn.name().isEmpty() ? "" : yarn.name() + ": ");
        text.append(plain(yarn.metresPerBall())).append("m/").append(plain(yarn.gramsPerBall())).append('g');
        if (!line.colour().isEmpty()) {
            text.append(", colour ").append(line.colour());
        }
        String comma = line.colour().isEmpty() ? " " : ", ";
        yarn.category().ifPresent(category -> text.append(comma).append("category ").append(category));
        line.balls().ifPresent(balls -> text.append(comma).append(balls).append(" balls"));
        return text.toString();
    }

    static String colours(Materials materials) {
        return materials.colours().entrySet().stream()
                .map(colour -> Literals.text(colour.getKey()) + ": " + colour.getValue())
                .collect(Collectors.joining(PARTED + " "));
    }

    static String notions(Materials materials) {
        return String.join(PARTED + " ", materials.notions());
    }

    static String needle(Materials materials) {
        return materials.needle().map(Object::toString).orElse("");
    }

    static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /** The materials with the yarns of the text in place of theirs; an empty text takes them away. */
    static Materials withYarns(Materials materials, String given, String text) throws Refusal {
        List<YarnLine> yarns = new ArrayList<>();
        for (String one : parts(text)) {
            Matcher matcher = YARN.matcher(one);
            if (!matcher.matches()) {
                throw new Refusal(Words.NOT_A_YARN.with(given, one));
            }
            yarns.add(accepted(given, () -> yarn(matcher)));
        }
        return accepted(given, () -> materials.withYarns(yarns));
    }

    private static YarnLine yarn(Matcher matcher) {
        String name = matcher.group("name") == null ? "" : matcher.group("name").strip();
        Yarn yarn = new Yarn(name, Double.parseDouble(matcher.group(2)), Double.parseDouble(matcher.group(3)),
                number(matcher.group("category")));
        return new YarnLine(yarn, matcher.group("colour") == null ? "" : matcher.group("colour"),
                number(matcher.group("balls")));
    }

    /** The materials with the colours of the text in place of theirs; an empty text leaves the main yarn. */
    static Materials withColours(Materials materials, String given, String text) throws Refusal {
        Map<ColourPlace, Integer> colours = new EnumMap<>(ColourPlace.class);
        for (String one : parts(text)) {
            Matcher matcher = COLOUR.matcher(one);
            if (!matcher.matches()) {
                throw new Refusal(Words.NOT_A_COLOUR.with(given, one));
            }
            ColourPlace place = Choice.of(given, matcher.group("place"), ColourPlace.class);
            if (colours.put(place, Integer.parseInt(matcher.group("yarn"))) != null) {
                throw new Refusal(Words.COLOUR_TWICE.with(given, Literals.text(place)));
            }
        }
        return accepted(given, () -> materials.withColours(colours));
    }

    /** The materials with the notions of the text in place of theirs; an empty text takes them away. */
    static Materials withNotions(Materials materials, String given, String text) throws Refusal {
        return accepted(given, () -> materials.withNotions(parts(text)));
    }

    /** The materials with the needle of the text in place of theirs; an empty text takes it away. */
    static Materials withNeedle(Materials materials, String given, String text) throws Refusal {
        return accepted(given, () -> materials.withNeedle(text.isBlank() ? Optional.empty()
                : Optional.of(Literals.length(text))));
    }

    private static List<String> parts(String text) {
        return Arrays.stream(text.split(PARTED)).map(String::strip).filter(part -> !part.isEmpty()).toList();
    }

    static <T> T accepted(String given, Supplier<T> made) throws Refusal {
        try {
            return made.get();
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }

    private static OptionalInt number(String text) {
        return text == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
    }
}
