package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.Vocabulary;

/**
 * Puts letters in place of the lists that are longer than the house style allows, and their values into tables as narrow
 * as that. Letters begin anew under every heading; there one list has one letter wherever it stands.
 */
final class Lettering {

    /** Blanks between two columns. */
    static final int GAP = 2;

    private record Column(String letter, List<String> values) {
        int width() {
            return values.stream().mapToInt(String::length).reduce(letter.length(), Math::max);
        }
    }

    private final HouseStyle style;
    private final Vocabulary vocabulary;
    private final List<String> sizes;
    private final List<String> alphabet;
    /** A letter that is also the name of a size would be read as that size. */
    private final Set<String> labels;
    private final List<Lettered> done = new ArrayList<>();
    private final Map<List<Optional<String>>, String> letters = new HashMap<>();
    private final List<Column> waiting = new ArrayList<>();
    private String heading;
    private int next;

    private Lettering(HouseStyle style, List<String> sizes) {
        this.style = style;
        this.vocabulary = Vocabulary.of(style);
        this.sizes = sizes.stream().map(FrontMatter::oneLine).toList();
        this.heading = vocabulary.phrase("letters.front");
        this.alphabet = List.of(vocabulary.phrase("letters").split(" "));
        this.labels = sizes.stream().map(label -> label.toUpperCase(Locale.ROOT)).collect(Collectors.toSet());
    }

    static List<Lettered> of(List<Paragraph> paragraphs, HouseStyle style, List<String> sizes) {
        if (style.longestList() == 0 || sizes.size() == 1) {
            return paragraphs.stream().map(paragraph -> new Lettered(paragraph, List.of())).toList();
        }
        Lettering lettering = new Lettering(style, sizes);
        paragraphs.forEach(lettering::add);
        lettering.finishSection();
        lettering.explain();
        return List.copyOf(lettering.done);
    }

    private void add(Paragraph paragraph) {
        if (paragraph.role() == Role.HEADING) {
            finishSection();
            letters.clear();
            next = 0;
            heading = PlainText.of(paragraph.pieces(), style);
        }
        boolean listed = paragraph.role() != Role.SIZES && paragraph.role() != Role.HEADING;
        Paragraph lettered = listed ? new Paragraph(paragraph.role(), lettered(paragraph.pieces())) : paragraph;
        List<SmallTable> full = new ArrayList<>();
        for (int room = room(); room < waiting.size(); room = room()) {
            full.add(table(room));
        }
        done.add(new Lettered(lettered, full));
    }

    private List<Piece> lettered(List<Piece> pieces) {
        Phrase phrase = new Phrase();
        boolean afterLetter = false;
        for (Piece piece : pieces) {
            switch (piece) {
                case Piece.Words(String words) -> {
                    // as in every A-th round
                    phrase.add(afterLetter && Character.isLetter(words.charAt(0)) ? "-" + words : words);
                    afterLetter = false;
                }
                case Piece.Values values -> {
                    afterLetter = style.sized(values.each()).length() > style.longestList();
                    if (afterLetter && phrase.endsInLetter()) {
                        phrase.add(" ");
                    }
                    phrase.add(List.of(afterLetter ? letter(values.each()) : values));
                }
            }
        }
        return phrase.pieces();
    }

    private Piece letter(List<Optional<String>> each) {
        String letter = letters.computeIfAbsent(each, list -> {
            String taken = nextLetter();
            waiting.add(new Column(taken, list.stream().map(value -> value.orElse(style.dash())).toList()));
            return taken;
        });
        return new Piece.Values(List.of(Optional.of(letter)));
    }

    private String nextLetter() {
        String letter = alphabet.get(next % alphabet.size()).repeat(next / alphabet.size() + 1);
        next++;
        return labels.contains(letter) ? nextLetter() : letter;
    }

    /** Of the columns that wait, how many a table has room for; at least one. */
    private int room() {
        int width = sizes.stream().mapToInt(String::length)
                .reduce(vocabulary.phrase("letters.size").length(), Math::max);
        int room = 0;
        while (room < waiting.size()) {
            width += GAP + waiting.get(room).width();
            if (room > 0 && width > style.longestList()) {
                break;
            }
            room++;
        }
        return room;
    }

    /** The table of the first columns that wait, which then wait no more. */
    private SmallTable table(int columns) {
        List<Column> its = List.copyOf(waiting.subList(0, columns));
        waiting.subList(0, columns).clear();
        List<String> heads = its.stream().map(Column::letter).toList();
        List<SmallTable.Row> rows = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            int row = size;
            rows.add(new SmallTable.Row(sizes.get(size), its.stream().map(column -> column.values().get(row)).toList()));
        }
        String caption = columns == 1 ? vocabulary.phraseOfOne("letters.caption") : vocabulary.phrase("letters.caption");
        return new SmallTable(caption.replace("{1}", LineText.list(vocabulary, heads)).replace("{0}", heading),
                vocabulary.phrase("letters.size"), heads, rows);
    }

    private void finishSection() {
        if (!waiting.isEmpty()) {
            Lettered last = done.removeLast();
            List<SmallTable> tables = new ArrayList<>(last.tables());
            tables.add(table(waiting.size()));
            done.add(new Lettered(last.paragraph(), tables));
        }
    }

    /** Says what letters are, right after the sizes, which come before all lists. */
    private void explain() {
        boolean used = done.stream().anyMatch(lettered -> !lettered.tables().isEmpty());
        for (int at = 0; used && at < done.size(); at++) {
            if (done.get(at).paragraph().role() == Role.SIZES) {
                done.add(at + 1, new Lettered(new Paragraph(Role.NOTE, Phrase.words(vocabulary.phrase("note.letters"))),
                        List.of()));
                return;
            }
        }
    }
}
