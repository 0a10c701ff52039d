package turnheel.exchange.sizes;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;

/**
 * What a column of a table of sizes holds, by its heading: {@code foot-length}, {@code Foot length (cm)} or the key
 * {@code body.footLength}.
 *
 * @param unit of bare numbers in it, as in {@code cm} or {@code %}
 */
record SizeColumn(Parameter parameter, Optional<String> unit) {

    private static final Pattern HEADING = Pattern.compile(
            "(.*?)\\s*(?:[(\\[]\\s*(mm|cm|in|%)\\s*[)\\]]|[\\s,]\\s*(mm|cm|in|%))?", Pattern.CASE_INSENSITIVE);
    /** A number that only lacks its unit: {@code 9.5}, {@code 9 1/2}, {@code -10}. */
    private static final Pattern BARE = Pattern.compile(
            "[+\\-−]?(?:\\d+(?:\\.\\d+)?|\\.\\d+|(?:\\d+[\\s-]+)?\\d+/\\d+)");
    /** A length never has thousands, so a comma between digits is a decimal mark. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

    /** The column of this heading, where it is a measurement's. */
    static Optional<SizeColumn> of(String heading) {
        Matcher matcher = HEADING.matcher(heading.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Optional<String> unit = Optional.ofNullable(matcher.group(2)).or(() -> Optional.ofNullable(matcher.group(3)))
                .map(symbol -> symbol.toLowerCase(Locale.ROOT));
        String name = matcher.group(1);
        String word = name.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        return Catalogue.all().stream().filter(SizeColumn::isInput)
                .filter(parameter -> parameter.key().name().equalsIgnoreCase(name)
                        || isOfSize(parameter) && word(parameter).equals(word))
                .findFirst().map(parameter -> new SizeColumn(parameter, unit));
    }

    private static boolean isInput(Parameter parameter) {
        return parameter.role() == Role.INPUT;
    }

    private static boolean isOfSize(Parameter parameter) {
        return parameter.part() == Part.BODY || parameter.part() == Part.FIT;
    }

    /** The words that headings can be. */
    static List<String> words() {
        return Catalogue.all().stream().filter(SizeColumn::isInput).filter(SizeColumn::isOfSize).map(SizeColumn::word)
                .toList();
    }

    /** {@code foot-length} for {@code body.footLength}. */
    static String word(Parameter parameter) {
        String name = parameter.key().name().substring(parameter.key().part().length() + 1);
        return name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    /** Whether a text is a number that lacks a unit, here where the heading has none. */
    boolean lacksUnit(String text) {
        return unit.isEmpty() && BARE.matcher(withPoint(text)).matches();
    }

    /**
     * The quantity that a text stands for.
     *
     * @throws IllegalArgumentException when it stands for none; the message says what would do
     */
    Quantity quantity(String text) {
        String pointed = withPoint(text);
        boolean bare = BARE.matcher(pointed).matches();
        return Quantity.parse(unit.filter(symbol -> bare).map(symbol -> pointed + " " + symbol).orElse(pointed));
    }

    private static String withPoint(String text) {
        return DECIMAL_COMMA.matcher(text.strip()).replaceAll(".");
    }
}
