package turnheel.cli;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.design.RibCuff;
import turnheel.model.PartElements;
import turnheel.model.pattern.CuffElement;
import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.RibCuffElement;

/** A cuff as it is written on the command line: {@code rib-2x2} is two knit, two purl; other cuffs are a word. */
final class CuffText {

    private static final Pattern RIB = Pattern.compile("rib-(\\d{1,3})[x×](\\d{1,3})");

    private CuffText() {
    }

    static String of(CuffElement cuff) {
        return cuff instanceof RibCuffElement rib ? "rib-" + rib.getKnit() + "x" + rib.getPurl()
                : PartKind.word(PatternPackage.Literals.PATTERN__CUFF, cuff.eClass());
    }

    static void write(turnheel.model.pattern.Pattern document, String given, String value) throws Refusal {
        Matcher rib = RIB.matcher(value);
        if (rib.matches()) {
            boolean mayAdjust = document.getCuff() instanceof RibCuffElement before && before.isMayAdjust();
            document.setCuff(PartElements.cuff(rib(given, rib, mayAdjust)));
            return;
        }
        List<String> words = PartKind.words(PatternPackage.Literals.PATTERN__CUFF);
        if (value.equals("rib") || !words.contains(value)) {
            throw new Refusal(Words.NOT_A_CUFF.with(given, value));
        }
        PartKind.write(document, PatternPackage.Literals.PATTERN__CUFF, given, value);
    }

    private static RibCuff rib(String given, Matcher matcher, boolean mayAdjust) throws Refusal {
        try {
            return new RibCuff(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)), mayAdjust);
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }
}
