package turnheel.exchange;

import java.util.List;
import java.util.stream.Stream;

/**
 * What people type, paste or plant where a title, a size or a yarn is asked for. In every format it stays the text that
 * it is: it is never run, never becomes markup, a field or a path, and never ends or hides what stands around it.
 */
public final class NastyTexts {

    /** Formulas and what programs take for one, also after blanks and in full-width letters. */
    public static final List<String> FORMULAS = List.of("=1+1", "+1+1", "-1+1", "@SUM(1,1)", "\t=1+1", "\r=1+1",
            "\n=1+1", "  =1+1", "=HYPERLINK(\"x\",\"y\")", "=cmd|' /C calc'!A0", "'=1+1", "\uFF1D1+1", "TRUE", "1E5",
            "R1C1", "38/39");

    /** Markup that would run, load, end something or open something, as XML, HTML, CSS or Markdown. */
    public static final List<String> MARKUP = List.of("<script>document.title='run'</script>",
            "\"><img src=\"x\" onerror=\"document.title='run'\">", "'><svg onload=alert(1)>", "<b>&amp;</b>]]>", "]]>",
            "<![CDATA[ open", "<!-- open", "--> closed", "</title></style></svg></body>", "<?xml version=\"1.1\"?>",
            "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>&e;", "&#60;script&#62; &lt; &nbsp;",
            "\\3C/style> */ } body { display: none } /*", "expression(alert(1)); url(x)", "javascript:alert(1)",
            "# heading\n- entry\n| a | b |\n", "[link](x) ![picture](y) `code` **bold** _not_ \\*", "    indented",
            "{{constructor}} ${x} #{x} {0} {9} %s %n '{'");

    /** Codes of fields, headers, escapes and paths in office files and file systems. */
    public static final List<String> CODES = List.of("&B&L&P bold & page", "&&&", "_x0041_ is no letter",
            "{ INCLUDETEXT \"x\" } { PAGE }", "\\* MERGEFORMAT", "(\\) Tj ET", "../../etc", "C:\\con", "a/b\\c:d*e?f");

    /** Letters that hide, turn, break or do not exist. */
    public static final List<String> LETTERS = List.of("bell \u0007 and nul \u0000", "escape \u001B[31m red",
            "lone \uD83E surrogate", "\uDD83 backwards \uD83E", "no letters \uFFFE\uFFFF",
            "turned \u202Egnp.exe\u202C and \u2067open", "zero\u200Bwidth\u200D\uFEFF", "line\u2028paragraph\u2029end",
            "next\u0085line", "\u00A0", "mo\u0308we \u00DFo\u0302ck", "Möwe 🧦 靴下", "\u05D2\u05E8\u05D1 1 2 3",
            "a\u0301\u0301\u0301\u0301\u0301\u0301\u0301\u0301", "\"quoted\", comma; 'single'", " ", "");

    /** No place to break, and far too long. */
    public static final List<String> LONG = List.of("Unbreakable".repeat(30), "endless ".repeat(200));

    private NastyTexts() {
    }

    /** Each of them. */
    public static List<String> all() {
        return Stream.of(FORMULAS, MARKUP, CODES, LETTERS, LONG).flatMap(List::stream).toList();
    }

    /** Those that can be the label of a size. */
    public static List<String> labels() {
        return all().stream().filter(text -> !text.isBlank() && text.length() <= 40).toList();
    }
}
