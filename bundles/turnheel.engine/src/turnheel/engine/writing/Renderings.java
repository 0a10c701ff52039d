package turnheel.engine.writing;

import java.util.regex.Pattern;

/** A written pattern as one text file; lines end in a line feed. */
public final class Renderings {

    private static final char LINE_END = '\n';
    /** What could be taken for markup in Markdown (CommonMark), wherever it stands. */
    private static final Pattern MARKUP = Pattern.compile("([\\\\`*_{}\\[\\]<>#|~&])");
    /** What is markup at the start of a line only: lists and rules. */
    private static final Pattern MARKUP_AT_START = Pattern.compile("^(\\s*(?:\\d+)?)([-+.)=])");

    private Renderings() {
    }

    /** One paragraph a line, headings set off by an empty line. */
    public static String plain(PatternText text) {
        StringBuilder plain = new StringBuilder();
        for (Paragraph paragraph : text.paragraphs()) {
            if (paragraph.role() == Role.HEADING) {
                plain.append(LINE_END);
            }
            plain.append(text.text(paragraph)).append(LINE_END);
            if (paragraph.role() == Role.TITLE) {
                plain.append(LINE_END);
            }
        }
        return plain.toString();
    }

    /** Markdown in the common dialect; what the designer typed is never markup. */
    public static String markdown(PatternText text) {
        StringBuilder markdown = new StringBuilder();
        boolean inList = false;
        for (Paragraph paragraph : text.paragraphs()) {
            boolean item = paragraph.role() == Role.ABBREVIATION;
            if (!markdown.isEmpty() && !(item && inList)) {
                markdown.append(LINE_END);
            }
            markdown.append(mark(paragraph.role())).append(escaped(text.text(paragraph))).append(LINE_END);
            inList = item;
        }
        return markdown.toString();
    }

    private static String mark(Role role) {
        return switch (role) {
            case TITLE -> "# ";
            case HEADING -> "## ";
            case ABBREVIATION -> "- ";
            case CAUTION -> "> ";
            case SIZES, MEASUREMENT, MATERIAL, GAUGE, NOTE, INSTRUCTION -> "";
        };
    }

    private static String escaped(String text) {
        String everywhere = MARKUP.matcher(text).replaceAll("\\\\$1");
        return MARKUP_AT_START.matcher(everywhere).replaceAll("$1\\\\$2");
    }
}
