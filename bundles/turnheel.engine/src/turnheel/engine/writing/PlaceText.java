package turnheel.engine.writing;

import java.text.MessageFormat;
import java.util.ResourceBundle;

import turnheel.engine.shaping.RoundFinder.Slip;
import turnheel.engine.shaping.Sign;

/** How the knitting is read, in words: {@code place.properties}. */
public final class PlaceText {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.writing.place");

    private PlaceText() {
    }

    /** What to look for. */
    public static String of(Sign sign) {
        return WORDS.getString("sign." + sign.name());
    }

    /** What went wrong and how the count is made whole again, two sentences. */
    public static String of(Slip slip) {
        return of(slip.kind(), slip.stitches());
    }

    /** The same for so many stitches, wherever it was. */
    public static String of(Slip.Kind kind, int stitches) {
        return MessageFormat.format(WORDS.getString("slip." + kind.name()), stitches);
    }
}
