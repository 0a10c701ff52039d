package turnheel.engine.wording;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;

import turnheel.engine.wording.HouseStyle.English;
import turnheel.engine.wording.HouseStyle.Lengths;
import turnheel.engine.wording.HouseStyle.Needles;

/**
 * House styles: those that ship as {@code style-NAME.properties}, and any other table of the same keys. A key that a
 * table does not have is as in {@code style-studio.properties}; {@code word.} and the key of a phrase replaces that
 * phrase.
 */
public final class HouseStyles {

    /** The names of the styles that ship, the usual one first. */
    public static final List<String> SHIPPED = List.of("studio", "longhand", "clusters");

    private static final String WORD = "word.";

    private HouseStyles() {
    }

    /** The style that is used where nobody chose one. */
    public static HouseStyle usual() {
        return shipped(SHIPPED.getFirst());
    }

    /**
     * A style that ships.
     *
     * @throws IllegalArgumentException when there is none of this name; the message lists them
     */
    public static HouseStyle shipped(String name) {
        if (!SHIPPED.contains(name)) {
            throw new IllegalArgumentException("there is no house style \"%s\"; there are %s".formatted(name,
                    String.join(", ", SHIPPED)));
        }
        return read(name, table(name));
    }

    private static Map<String, String> table(String name) {
        ResourceBundle entries = ResourceBundle.getBundle("turnheel.engine.wording.style-" + name);
        Map<String, String> table = new TreeMap<>();
        entries.keySet().forEach(key -> table.put(key, entries.getString(key)));
        return table;
    }

    /**
     * A designer's own style.
     *
     * @param name what it is called, for messages
     * @param entries the keys of {@code style-studio.properties} that it changes, and words
     * @throws IllegalArgumentException when a key is unknown or a value does not suit it; the message names both and
     *     says what would do
     */
    public static HouseStyle read(String name, Map<String, String> entries) {
        Map<String, String> table = table(SHIPPED.getFirst());
        Map<String, String> words = new TreeMap<>();
        entries.forEach((key, value) -> {
            if (key.startsWith(WORD)) {
                words.put(requireKnownWord(key.substring(WORD.length())), value);
            } else if (table.containsKey(key)) {
                table.put(key, value);
            } else {
                throw new IllegalArgumentException("a house style has no \"%s\"; it has %s, and word.… for a phrase"
                        .formatted(key, String.join(", ", table.keySet())));
            }
        });
        requireClearFractions(table);
        requireBrackets(table);
        return style(name, table, words);
    }

    /** A slash between sizes cannot be told from that of a fraction. */
    private static void requireClearFractions(Map<String, String> table) {
        boolean slash = table.get("sized.opening").contains("/") || table.get("sized.separator").contains("/");
        if (slash && !table.get("lengths").strip().equals("cm")) {
            throw new IllegalArgumentException(
                    "sizes parted by a slash cannot be told from fractions of an inch; write lengths=cm, or another separator");
        }
    }

    private static int longestList(Map<String, String> table) {
        String value = required(table, "sized.longest").strip();
        boolean whole = value.matches("\\d{1,3}");
        int characters = whole ? Integer.parseInt(value) : -1;
        if (characters != 0 && (characters < HouseStyle.NARROWEST || characters > HouseStyle.WIDEST)) {
            throw new IllegalArgumentException("sized.longest of a house style is \"%s\"; write 0, or from %d to %d characters"
                    .formatted(value, HouseStyle.NARROWEST, HouseStyle.WIDEST));
        }
        return characters;
    }

    /** Groups of values can be told apart by their brackets alone. */
    private static void requireBrackets(Map<String, String> table) {
        boolean brackets = !table.get("sized.opening").isBlank() && !table.get("sized.closing").isBlank();
        if (!brackets && !table.get("sized.group").strip().equals("0")) {
            throw new IllegalArgumentException(
                    "values in groups need brackets; write sized.opening and sized.closing, or sized.group=0");
        }
    }

    private static HouseStyle style(String name, Map<String, String> table, Map<String, String> words) {
        ListMarks marks = new ListMarks(table.get("sized.opening"), table.get("sized.separator"),
                table.get("sized.closing"), number(table, "sized.group", 0, 2, 3, 4, 5, 6, 7, 8));
        return new HouseStyle(name, marks, longestList(table), required(table, "sized.dash"),
                yes(table, "sized.oneForAll"), yes(table, "abbreviations"),
                English.valueOf(choice(table, "english", List.of("US", "UK"))),
                switch (choice(table, "lengths", List.of("cm", "in", "both"))) {
                    case "cm" -> Lengths.CENTIMETRES;
                    case "in" -> Lengths.INCHES;
                    default -> Lengths.BOTH;
                }, choice(table, "decimal", List.of(".", ",")), number(table, "inch.denominator", 1, 2, 4, 8),
                number(table, "percent.decimals", 0, 1, 2),
                Needles.valueOf(choice(table, "needles", List.of("neutral", "two", "four")).toUpperCase(Locale.ROOT)),
                words);
    }

    private static String requireKnownWord(String key) {
        if (!Vocabulary.knows(key)) {
            throw new IllegalArgumentException("there is no phrase \"%s\" to replace".formatted(key));
        }
        return key;
    }

    private static String required(Map<String, String> table, String key) {
        String value = table.getOrDefault(key, "");
        if (value.isBlank()) {
            throw new IllegalArgumentException("%s of a house style cannot be empty".formatted(key));
        }
        return value;
    }

    private static String choice(Map<String, String> table, String key, List<String> choices) {
        String value = required(table, key).strip();
        if (!choices.contains(value)) {
            throw new IllegalArgumentException("%s of a house style is \"%s\"; write one of: %s".formatted(key, value,
                    String.join(" ", choices)));
        }
        return value;
    }

    private static boolean yes(Map<String, String> table, String key) {
        return choice(table, key, List.of("yes", "no")).equals("yes");
    }

    private static int number(Map<String, String> table, String key, int... choices) {
        return Integer.parseInt(choice(table, key, Arrays.stream(choices).mapToObj(Integer::toString).toList()));
    }
}
