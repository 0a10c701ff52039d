package turnheel.cli;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.design.Materials;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;

/**
 * Yarn and swatch as they are written on the command line: {@code Tidal Four: 200m/50g}, with {@code category 1} and
 * {@code 2 balls} after it where they are known; {@code 30x40 12.5g} is a swatch of 30 stitches and 40 rounds.
 */
final class MaterialsText {

    private static final String NUMBER = "(\\d{1,5}(?:\\.\\d{1,4})?)";
    private static final Pattern YARN = Pattern.compile("(?:(?<name>[^:]*):)?\\s*" + NUMBER + "\\s*m\\s*/\\s*" + NUMBER
            + "\\s*g(?:,?\\s+category\\s+(?<category>\\d))?(?:,?\\s+(?<balls>\\d{1,3})\\s+balls?)?\\s*");
    private static final Pattern SWATCH = Pattern.compile(
            "\\s*(\\d{1,4})\\s*[x×]\\s*(\\d{1,4})\\s+" + NUMBER + "\\s*g\\s*");

    private MaterialsText() {
    }

    static String yarn(Materials materials) {
        return materials.yarn().map(yarn -> {
            StringBuilder text = new StringBuilder(yarn.name().isEmpty() ? "" : yarn.name() + ": ");
            text.append(plain(yarn.metresPerBall())).append("m/").append(plain(yarn.gramsPerBall())).append('g');
            yarn.category().ifPresent(category -> text.append(" category ").append(category));
            materials.balls().ifPresent(balls -> text.append(' ').append(balls).append(" balls"));
            return text.toString();
        }).orElse("");
    }

    static String swatch(Materials materials) {
        return materials.swatch().map(swatch -> swatch.stitches() + "x" + swatch.rounds() + " " + plain(swatch.grams()) + "g")
                .orElse("");
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /** The materials with the yarn of the text in place of theirs; an empty text takes it away. */
    static Materials withYarn(Materials materials, String given, String text) throws Refusal {
        if (text.isBlank()) {
            return new Materials(Optional.empty(), OptionalInt.empty(), materials.swatch(), materials.margin());
        }
        Matcher matcher = YARN.matcher(text);
        if (!matcher.matches()) {
            throw new Refusal(Words.NOT_A_YARN.with(given, text));
        }
        String name = matcher.group("name") == null ? "" : matcher.group("name").strip();
        try {
            Yarn yarn = new Yarn(name, Double.parseDouble(matcher.group(2)), Double.parseDouble(matcher.group(3)),
                    number(matcher.group("category")));
            return new Materials(Optional.of(yarn), number(matcher.group("balls")), materials.swatch(), materials.margin());
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }

    /** The materials with the swatch of the text in place of theirs; an empty text takes it away. */
    static Materials withSwatch(Materials materials, String given, String text) throws Refusal {
        if (text.isBlank()) {
            return new Materials(materials.yarn(), materials.balls(), Optional.empty(), materials.margin());
        }
        Matcher matcher = SWATCH.matcher(text);
        if (!matcher.matches()) {
            throw new Refusal(Words.NOT_A_SWATCH.with(given, text));
        }
        try {
            return materials.with(new Swatch(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)),
                    Double.parseDouble(matcher.group(3))));
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }

    private static OptionalInt number(String text) {
        return text == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
    }
}
