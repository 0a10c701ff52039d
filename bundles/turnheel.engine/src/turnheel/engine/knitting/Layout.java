package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import turnheel.engine.knitting.grammar.Instructions;

/** Cuts a text into paragraphs and tells headings and front matter from instructions. */
final class Layout {

    /** What a paragraph is, by its place and form. */
    enum Role {
        TITLE, HEADING, FRONT, BODY,
        /** The name of a stitch pattern, whose rounds follow and are worked where others refer to them. */
        STITCH_PATTERN
    }

    /**
     * Lines that belong together.
     *
     * @param section the heading that it stands under, or the word before its colon; as it is written
     * @param words of all its lines; those after the colon where {@code section} stands before it
     */
    record Paragraph(Role role, String section, List<Word> words) {
    }

    /** Characters of the words before a colon. */
    private static final int LONGEST_KEY = 40;

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
        if (isHeading(text, plain, words, first == 0 || lines.get(first - 1).isBlank())) {
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
        if (before.length() < SHORTEST_BROKEN_LINE || next.isBlank()
                || ".:!?".indexOf(before.charAt(before.length() - 1)) >= 0) {
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
        if (words.stream().anyMatch(word -> table.list("multiple").contains(word.text()))) {
            stitchPattern(name, words);
            return;
        }
        section = name;
        front = isFront(name);
        paragraphs.add(new Paragraph(Role.HEADING, name, words));
    }

    private boolean isStitchPattern(String name) {
        return table.list("stitch-pattern").contains(name.toLowerCase(Locale.ROOT));
    }

    /** What stands in brackets tells its size, not its name. */
    private void stitchPattern(String title, List<Word> words) {
        int bracket = title.indexOf('(');
        List<Word> name = words.stream().takeWhile(word -> word.kind() == Word.Kind.LETTERS).toList();
        section = bracket > 0 ? title.substring(0, bracket).strip() : title;
        front = false;
        paragraphs.add(new Paragraph(Role.STITCH_PATTERN, section, name));
    }

    private boolean isFront(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return table.list("front").contains(small) || small.length() < LONGEST_KEY
                && table.list("front-begin").stream().anyMatch(small::startsWith);
    }

    private void add(String plain, List<Word> words) {
        int colon = plain.indexOf(':');
        String before = colon < 0 ? "" : plain.substring(0, colon).strip();
        if (isFront(before)) {
            int first = words.getFirst().line();
            List<Word> value = words.stream().filter(word -> word.line() > first || word.from() > colon).toList();
            paragraphs.add(new Paragraph(Role.FRONT, before, value));
            return;
        }
        if (isStitchPattern(before)) {
            stitchPattern(plain.substring(colon + 1).strip(), words.stream().filter(word -> word.from() > colon).toList());
            return;
        }
        boolean told = Labels.startsNumberedLabel(words) || !front || section.isEmpty() && tellsToWork(words);
        paragraphs.add(new Paragraph(told ? Role.BODY : Role.FRONT, section, words));
        if (told && front && !isFront(section)) {
            front = false;
        }
    }

    /** Whether a line before any heading begins with a word of the needle. */
    private boolean tellsToWork(List<Word> words) {
        Phrases.Found<ReadingWords.Meaning> first = table.phrases().longest(words, 0);
        return first != null && switch (first.meaning().token()) {
            case Instructions.CAST_ON, Instructions.KNIT, Instructions.PURL, Instructions.STITCH, Instructions.REPEAT,
                    Instructions.BIND_OFF, Instructions.PICK_UP, Instructions.GRAFT, Instructions.FLAT_ON,
                    Instructions.JOIN -> true;
            default -> false;
        };
    }

    /** A line of a list such as {@code RS – right side}; a heading such as {@code Toe – left foot} begins otherwise. */
    private static boolean explainsShortWord(List<Word> words) {
        String first = words.getFirst().raw();
        return words.size() > 1 && words.get(1).is("-") && first.chars().skip(1).noneMatch(Character::isLowerCase);
    }

    /** A heading stands alone, is short, and is no sentence. */
    private boolean isHeading(String text, String plain, List<Word> words, boolean apart) {
        String stripped = plain.strip();
        if (text.stripLeading().startsWith("#")) {
            return true;
        }
        char last = stripped.charAt(stripped.length() - 1);
        boolean colon = last == ':';
        boolean within = stripped.indexOf(':') >= 0 && !colon;
        String before = within ? stripped.substring(0, stripped.indexOf(':')).strip() : "";
        boolean parted = within && apart && !isFront(before) && !isStitchPattern(before) && !Labels.startsLabel(words)
                && !table.list("sizes").contains(words.getFirst().text());
        boolean sentence = last == '.' || last == ';' || last == ',' || within && !parted;
        boolean explained = stripped.indexOf('=') >= 0 || front && explainsShortWord(words);
        boolean begins = !explained && Character.isUpperCase(stripped.charAt(0)) || paragraphs.isEmpty();
        boolean counts = words.stream().anyMatch(word -> word.kind() == Word.Kind.NUMBER);
        boolean named = colon && Labels.startsLabel(words);
        return begins && !sentence && !named && (!counts || paragraphs.isEmpty()) && words.size() <= LONGEST_HEADING
                && !table.list("no-heading").contains(words.getFirst().text());
    }
}
