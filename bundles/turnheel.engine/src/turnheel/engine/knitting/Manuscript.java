package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import turnheel.engine.instruction.Line;
import turnheel.engine.knitting.Layout.Paragraph;
import turnheel.engine.query.Check;
import turnheel.engine.query.Place;
import turnheel.engine.query.Query;

/**
 * A written pattern, read. Any text can be read; what is no instruction is told by {@link #lines}, and by queries where it
 * should have been one.
 */
public final class Manuscript {

    private final List<ReadLine> lines;
    private final List<String> sizes;
    private final List<Told> told;
    private final List<Query> queries;
    private final List<Paragraph> paragraphs;
    private final List<String> text;

    private Manuscript(List<ReadLine> lines, List<String> sizes, BodyReader body, List<Paragraph> paragraphs,
            List<String> text) {
        this.lines = List.copyOf(lines);
        this.sizes = List.copyOf(sizes);
        this.told = List.copyOf(body.told());
        this.queries = List.copyOf(body.queries());
        this.paragraphs = List.copyOf(paragraphs);
        this.text = text;
    }

    /** Reads a text: plain or with the signs of Markdown, lines ended in any way. */
    public static Manuscript read(String text) {
        ReadingWords table = ReadingWords.ENGLISH;
        List<String> lines = text.lines().map(Scanner::ordinary).toList();
        List<Paragraph> paragraphs = Layout.of(lines, table);
        SizeNames sizes = new SizeNames(SizesLine.names(paragraphs, table), table);
        BodyReader body = new BodyReader(table, sizes, Names.of(paragraphs, sizes), charts(paragraphs, table));
        List<ReadLine> read = new ArrayList<>();
        String section = "";
        for (Paragraph paragraph : paragraphs) {
            ReadLine.Kind kind = switch (paragraph.role()) {
                case TITLE -> ReadLine.Kind.TITLE;
                case HEADING -> {
                    section = paragraph.section();
                    body.section(section, paragraph.words());
                    yield ReadLine.Kind.HEADING;
                }
                case STITCH_PATTERN -> {
                    section = paragraph.section();
                    body.stitchPattern(section);
                    yield ReadLine.Kind.HEADING;
                }
                case FRONT -> ReadLine.Kind.FRONT;
                case BODY -> body.read(paragraph.words());
            };
            add(paragraph, kind, section, read);
        }
        while (read.size() < lines.size()) {
            read.add(new ReadLine(read.size() + 1, ReadLine.Kind.EMPTY, section));
        }
        return new Manuscript(read, sizes.names(), body, paragraphs, lines);
    }

    /** What stands after the word chart in headings and before colons. */
    private static Set<String> charts(List<Paragraph> paragraphs, ReadingWords table) {
        Set<String> charts = new HashSet<>();
        for (Paragraph paragraph : paragraphs) {
            String[] words = paragraph.section().toLowerCase(Locale.ROOT).split(" ");
            for (int at = 0; at + 1 < words.length; at++) {
                if (table.list("chart").contains(words[at])) {
                    charts.add(words[at + 1]);
                }
            }
        }
        return charts;
    }

    private static void add(Paragraph paragraph, ReadLine.Kind kind, String section, List<ReadLine> read) {
        if (paragraph.words().isEmpty()) {
            return;
        }
        int first = paragraph.words().getFirst().line();
        int last = paragraph.words().getLast().line();
        while (read.size() < first) {
            read.add(new ReadLine(read.size() + 1, ReadLine.Kind.EMPTY, section));
        }
        while (read.size() <= last) {
            read.add(new ReadLine(read.size() + 1, kind, section));
        }
    }

    /** Every line of the text in its order. */
    public List<ReadLine> lines() {
        return lines;
    }

    /** The names of the sizes, as the text gives them. */
    public List<String> sizes() {
        return sizes;
    }

    /** What the text tells to do, in its order. */
    public List<Line> instructions() {
        return told.stream().map(Told::line).toList();
    }

    /** Whether after such a slip more or fewer rounds may have been worked than the text means. */
    private static boolean changesRounds(Check check) {
        return switch (check) {
            case TEXT_UNREAD, TEXT_SIZES, TEXT_TOO_LARGE, TEXT_ROUNDS_MISSING, TEXT_ENDING, TEXT_COUNT -> true;
            default -> false;
        };
    }

    private static int line(Query query) {
        return switch (query.place()) {
            case Place.Text text -> text.line();
            case Place.Row row -> 0;
        };
    }

    /** Knits every size and tells what a person must look at. */
    public Knitted knit() {
        List<Query> all = new ArrayList<>(queries);
        Knitting knitting = Knitting.of(told, sizes);
        all.addAll(knitting.queries());
        Set<String> sound = new HashSet<>(sizes);
        all.stream().filter(query -> changesRounds(query.check())).forEach(query -> sound.removeAll(query.sizes()));
        all.addAll(new Editing(told, sizes, knitting.traces(), sound).queries(paragraphs, text));
        all.sort(Comparator.comparingInt(Manuscript::line));
        return new Knitted(knitting.traces(), all);
    }
}
