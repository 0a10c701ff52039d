package turnheel.exchange.markdown;

import java.util.regex.Pattern;

import turnheel.engine.wording.NoBreak;

/** Text that stays text in Markdown, in a line. */
final class Escaped {

    /**
     * What can be markup wherever it stands (CommonMark 0.31, sections 2.5 and 6), and what parts the cells of a table. An
     * ampersand is, where an entity could follow.
     */
    private static final Pattern ANYWHERE = Pattern.compile("([\\\\`*_\\[\\]<>#|~]|&(?=#?\\w+;))");
    /** What is markup at the start of a line only: lists, rules and underlines of headings. */
    private static final Pattern AT_START = Pattern.compile("^(\\d*)([-+.)=])");
    private static final int REPLACEMENT = 0xFFFD;

    private Escaped() {
    }

    /** Without blanks around it, which Markdown would take off or take for code. */
    static String of(String text) {
        StringBuilder line = new StringBuilder();
        NoBreak.ordinary(text).codePoints().forEach(letter -> line.appendCodePoint(visible(letter)));
        String everywhere = ANYWHERE.matcher(line.toString().strip()).replaceAll("\\\\$1");
        return AT_START.matcher(everywhere).replaceFirst("$1\\\\$2");
    }

    private static int visible(int letter) {
        if (Character.isISOControl(letter) || letter == 0x2028 || letter == 0x2029) {
            return ' ';
        }
        boolean surrogate = letter >= Character.MIN_SURROGATE && letter <= Character.MAX_SURROGATE;
        return surrogate ? REPLACEMENT : letter;
    }
}
