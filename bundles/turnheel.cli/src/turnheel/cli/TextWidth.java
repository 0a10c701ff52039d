package turnheel.cli;

import java.lang.Character.UnicodeBlock;
import java.lang.Character.UnicodeScript;
import java.util.Set;

/** How many columns of a terminal a text takes: two for East Asian letters and pictographs, none for marks. */
final class TextWidth {

    private static final Set<UnicodeScript> WIDE_SCRIPTS = Set.of(UnicodeScript.HAN, UnicodeScript.HIRAGANA,
            UnicodeScript.KATAKANA, UnicodeScript.HANGUL, UnicodeScript.BOPOMOFO, UnicodeScript.YI);
    private static final int FULL_WIDTH_END = 0xFF60;

    private TextWidth() {
    }

    static int of(String text) {
        return text.codePoints().map(TextWidth::of).sum();
    }

    private static int of(int character) {
        return switch (Character.getType(character)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
            default -> isWide(character) ? 2 : 1;
        };
    }

    private static boolean isWide(int character) {
        if (character < 0x1100) {
            return false;
        }
        if (UnicodeBlock.of(character) == UnicodeBlock.HALFWIDTH_AND_FULLWIDTH_FORMS) {
            return character <= FULL_WIDTH_END;
        }
        return Character.isEmojiPresentation(character) || WIDE_SCRIPTS.contains(UnicodeScript.of(character))
                || UnicodeBlock.of(character) == UnicodeBlock.CJK_SYMBOLS_AND_PUNCTUATION;
    }
}
