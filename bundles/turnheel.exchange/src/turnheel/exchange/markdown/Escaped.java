package turnheel.exchange.markdown;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.wording.NoBreak;

/** Text that stays text in Markdown, in a line. */
final class Escaped {

    /** What can be markup wherever it stands (CommonMark 0.31, section 2.4 and 6), and what parts the cells of a table. */
    private static final Pattern ANYWHERE = Pattern.compile("([\\\\`*_{}\\[\\]<>#|~&])");
    /** What is markup at the start of a line only: lists, rules and underlines of headings. */
    private static final Pattern AT_START = Pattern.compile("^(\\d*)([-+.)=])");
    /** The dialect turns bare addresses into links where they stand after a blank or bracket. */
    private static final Pattern ADDRESS = Pattern.compile("(?i)\\b(https?|ftp|mailto|xmpp)(:)|\\b(www)(\\.)|(@)");

    private static final int REPLACEMENT = 0xFFFD;

    private Escaped() {
    }

    /** Without blanks around it, which Markdown would take off or take for code. */
    static String of(String text) {
        StringBuilder line = new StringBuilder();
        NoBreak.ordinary(text).codePoints().forEach(letter -> line.appendCodePoint(visible(letter)));
        String everywhere = ANYWHERE.matcher(line.toString().strip()).replaceAll("\\\\$1");
        String addressed = ADDRESS.matcher(everywhere).replaceAll(found -> addressed(found.group()));
        return AT_START.matcher(addressed).replaceFirst("$1\\\\$2");
    }

    private static String addressed(String found) {
        int last = found.length() - 1;
        return Matcher.quoteReplacement(found.substring(0, last) + "\\" + found.charAt(last));
    }

    private static int visible(int letter) {
        if (Character.isISOControl(letter) || letter == 0x2028 || letter == 0x2029) {
            return ' ';
        }
        boolean surrogate = letter >= Character.MIN_SURROGATE && letter <= Character.MAX_SURROGATE;
        return surrogate ? REPLACEMENT : letter;
    }
}
