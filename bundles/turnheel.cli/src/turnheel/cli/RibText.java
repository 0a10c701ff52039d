package turnheel.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.design.RibCuff;

/** A rib as it is written on the command line: {@code rib-2x2} is two knit, two purl. */
final class RibText {

    private static final Pattern SHAPE = Pattern.compile("rib-(\\d{1,3})[x×](\\d{1,3})");

    private RibText() {
    }

    static String of(int knit, int purl) {
        return "rib-" + knit + "x" + purl;
    }

    static RibCuff parse(String given, String value) throws Refusal {
        Matcher matcher = SHAPE.matcher(value);
        if (!matcher.matches()) {
            throw new Refusal(Words.NOT_A_CUFF.with(given, value));
        }
        try {
            return new RibCuff(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }
}
