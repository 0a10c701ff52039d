package turnheel.engine.knitting;

import java.util.regex.Pattern;

/** Takes the signs of Markdown off a line and leaves every other character in its column. */
final class Markdown {

    private static final Pattern BEGINNING = Pattern
            .compile("^\\s*(#{1,6}(?=\\s)|>|[-+•](?=\\s)|\\*(?=\\s+[^*]*$)|\\d{1,3}\\)(?=\\s))");
    private static final Pattern BOLD = Pattern.compile("\\*\\*|__");
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?=[*_\\[\\]()#.!-])");

    private Markdown() {
    }

    static String plain(String line) {
        if (line.indexOf('#') < 0 && line.indexOf('*') < 0 && line.indexOf('_') < 0 && line.indexOf('\\') < 0
                && !BEGINNING.matcher(line).find()) {
            return line;
        }
        String plain = blank(BEGINNING, line);
        if (plain.indexOf("**") >= 0 || plain.indexOf("__") >= 0) {
            plain = blank(BOLD, plain);
        }
        return blank(ESCAPE, plain);
    }

    private static String blank(Pattern pattern, String line) {
        return pattern.matcher(line).replaceAll(match -> " ".repeat(match.group().length()));
    }
}
