package turnheel.model;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

import turnheel.engine.design.Gauge;
import turnheel.engine.design.Length;
import turnheel.engine.design.Quantity;

/**
 * How the engine's values are written in a pattern file and on a command line: {@code CUFF_DOWN} is {@code cuff-down}.
 * The words are part of the file format; they are never translated.
 */
public final class Literals {

    private Literals() {
    }

    /** The word for one of an enumeration's values. */
    public static String text(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The value that the word stands for.
     *
     * @throws IllegalArgumentException when there is none; the message lists the words that would do
     */
    public static <E extends Enum<E>> E parse(Class<E> kind, String word) {
        return Arrays.stream(kind.getEnumConstants()).filter(value -> text(value).equals(word)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"%s\" is unknown; write %s".formatted(word, words(kind))));
    }

    /**
     * A gauge such as {@code 32/10 cm}.
     *
     * @throws IllegalArgumentException when the text is not a gauge, or one that nobody knits
     */
    public static Gauge gauge(String text) {
        if (Quantity.parse(text) instanceof Gauge gauge) {
            return gauge;
        }
        throw new IllegalArgumentException(
                "\"%s\" is not a gauge; write one such as 32/10 cm or 8/1 in".formatted(text));
    }

    /**
     * A length such as {@code 2.5 mm}.
     *
     * @throws IllegalArgumentException when the text is not a length
     */
    public static Length length(String text) {
        if (Quantity.parse(text) instanceof Length length) {
            return length;
        }
        throw new IllegalArgumentException(
                "\"%s\" is not a length; write one such as 2.5 mm, 10 cm or 4 in".formatted(text));
    }

    private static String words(Class<? extends Enum<?>> kind) {
        return Arrays.stream(kind.getEnumConstants()).map(Literals::text).collect(Collectors.joining(" or "));
    }
}
