package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Cuts a text into paragraphs and tells headings and front matter from instructions. */
final class Layout {

    /** What a paragraph is, by its place and form. */
    enum Role {
        TITLE, HEADING, FRONT, BODY
    }

    /**
     * Lines that belong together.
     *
     * @param section the heading that it stands under, or the word before its colon; as it is written
     * @param words of all its lines; those after the colon where {@code section} stands before it
     */
    record Paragraph(Role role, String section, List<Word> words) {
    }

    /** Words of a heading. */
    private static final int LONGEST_HEADING = 9;

    /** Lines shorter than this are not broken by the width of a page. */
    private static final int SHORTEST_BROKEN_LINE = 40;

    private final ReadingWords table;
    private final Scanner scanner;
    private final List<Paragraph> paragraphs = new ArrayList<>();
    private String section = "";
    private boolean front = true;
    private boolean titled;

    private Layout(ReadingWords table) {
        this.table = table;
        this.scanner = new Scanner(table);
    }

    static List<Paragraph> of(List<String> lines, ReadingWords table) {
        Layout layout = new Layout(table);
        for (int line = 0; line < lines.size();) {
            line = layout.paragraph(lines, line);
        }
        return layout.paragraphs;
    }

    /** Reads one; the line after it. */
    private int paragraph(List<String> lines, int first) {
        String text = lines.get(first);
        String plain = Markdown.plain(text);
        List<Word> words = new ArrayList<>(scanner.words(plain, first));
        if (words.isEmpty()) {
            return first + 1;
        }
        if (isHeading(text, plain, words)) {
            heading(plain, words);
            return first + 1;
        }
        int next = first + 1;
        String last = plain;
        while (next < lines.size() && goesOn(last, lines.get(next))) {
            last = Markdown.plain(lines.get(next));
            words.addAll(scanner.words(last, next));
            next++;
        }
        add(plain, words);
        return next;
    }

    private static boolean goesOn(String line, String next) {
        String before = line.stripTrailing();
        if (before.length() < SHORTEST_BROKEN_LINE || next.isBlank() || ".:!?".indexOf(before.charAt(before.length() - 1)) >= 0) {
            return false;
        }
        char first = next.stripLeading().charAt(0);
        return Character.isLowerCase(first) || Character.isDigit(first) || first == '(' || first == '[' || first == '–';
    }

    private void heading(String plain, List<Word> words) {
        String title = plain.strip();
        String name = title.endsWith(":") ? title.substring(0, title.length() - 1).strip() : title;
        if (!titled && paragraphs.isEmpty() && !isFront(name)) {
            titled = true;
            paragraphs.add(new Paragraph(Role.TITLE, "", words));
            return;
        }
        section = name;
        front = isFront(name);
        paragraphs.add(new Paragraph(Role.HEADING, name, words));
    }

    private boolean isFront(String name) {
        return table.list("front").contains(name.toLowerCase(Locale.ROOT));
    }

    private void add(String plain, List<Word> words) {
        int colon = plain.indexOf(':');
        String before = colon < 0 ? "" : plain.substring(0, colon).strip();
        if (isFront(before)) {
            List<Word> value = words.stream().filter(word -> word.line() > words.getFirst().line() || word.from() > colon).toList();
            paragraphs.add(new Paragraph(Role.FRONT, before, value));
            return;
        }
        boolean told = Labels.startsLabel(words) || !front;
        paragraphs.add(new Paragraph(told ? Role.BODY : Role.FRONT, section, words));
        if (told && front && !isFront(section)) {
            front = false;
        }
    }

    /** A heading stands alone, is short, and is no sentence. */
    private boolean isHeading(String text, String plain, List<Word> words) {
        String stripped = plain.strip();
        if (text.stripLeading().startsWith("#")) {
            return true;
        }
        char last = stripped.charAt(stripped.length() - 1);
        boolean colon = last == ':';
        boolean sentence = last == '.' || last == ';' || last == ',' || stripped.indexOf(':') >= 0 && !colon;
        boolean begins = Character.isUpperCase(stripped.charAt(0)) || paragraphs.isEmpty();
        boolean counts = words.stream().anyMatch(word -> word.kind() == Word.Kind.NUMBER);
        boolean named = colon && Labels.startsLabel(words);
        return begins && !sentence && !named && (!counts || paragraphs.isEmpty()) && words.size() <= LONGEST_HEADING
                && !table.list("no-heading").contains(words.getFirst().text());
    }
}
