package turnheel.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.design.Length;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Swatch;
import turnheel.model.Literals;

/**
 * A swatch as it is written on the command line: {@code 30x40 12.5g} has 30 stitches and 40 rounds and was weighed,
 * {@code 42x58 over 13x13cm} was measured; {@code flat} and {@code washed} may follow.
 */
final class SwatchText {

    private static final Pattern SHAPE = Pattern.compile("\\s*(\\d{1,4})\\s*[x×]\\s*(\\d{1,4})"
            + "(?:\\s+over\\s+(?<width>[^x×,]+?)\\s*[x×]\\s*(?<height>[^x×,]+?(?<unit>mm|cm|in)))?"
            + "(?:,?\\s+(?<grams>\\d{1,5}(?:\\.\\d{1,4})?)\\s*g)?"
            + "(?:,?\\s+(?<worked>flat|in-the-round))?(?:,?\\s+(?<washed>washed))?\\s*");

    private SwatchText() {
    }

    static String of(Materials materials) {
        return materials.swatch().map(SwatchText::of).orElse("");
    }

    private static String of(Swatch swatch) {
        StringBuilder text = new StringBuilder(swatch.stitches() + "x" + swatch.rounds());
        swatch.measured().ifPresent(size -> text.append(" over ").append(size.width()).append(" x ").append(size.height()));
        swatch.grams().ifPresent(grams -> text.append(' ').append(MaterialsText.plain(grams)).append('g'));
        if (swatch.worked() != Swatch.Worked.IN_THE_ROUND) {
            text.append(' ').append(Literals.text(swatch.worked()));
        }
        return text.append(swatch.washed() ? " washed" : "").toString();
    }

    /** The materials with the swatch of the text in place of theirs; an empty text takes it away. */
    static Materials with(Materials materials, String given, String text) throws Refusal {
        if (text.isBlank()) {
            return materials.withSwatch(Optional.empty());
        }
        Matcher matcher = SHAPE.matcher(text);
        if (!matcher.matches() || matcher.group("grams") == null && matcher.group("width") == null) {
            throw new Refusal(Words.NOT_A_SWATCH.with(given, text));
        }
        return MaterialsText.accepted(given, () -> materials.with(swatch(matcher)));
    }

    private static Swatch swatch(Matcher matcher) {
        String grams = matcher.group("grams");
        String worked = matcher.group("worked");
        return new Swatch(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)),
                grams == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(grams)), measured(matcher),
                worked == null ? Swatch.Worked.IN_THE_ROUND : Literals.parse(Swatch.Worked.class, worked),
                matcher.group("washed") != null);
    }

    /** One unit may stand for both. */
    private static Optional<Swatch.Measured> measured(Matcher matcher) {
        String width = matcher.group("width");
        if (width == null) {
            return Optional.empty();
        }
        boolean hasUnit = Character.isLetter(width.charAt(width.length() - 1));
        Length across = Literals.length(hasUnit ? width : width + matcher.group("unit"));
        return Optional.of(new Swatch.Measured(across, Literals.length(matcher.group("height"))));
    }
}
