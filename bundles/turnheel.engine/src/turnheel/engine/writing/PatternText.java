package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.Vocabulary;

/** A written pattern in the words of a house style, for all of its sizes or for one of them. */
public final class PatternText {

    private final HouseStyle style;
    private final List<String> sizes;
    private final List<Content> contents;
    private final Unbroken unbroken;
    /** What each of the contents came to. */
    private final List<List<Paragraph>> made;

    PatternText(HouseStyle style, List<String> sizes, List<Content> contents) {
        this.style = style;
        this.sizes = List.copyOf(sizes);
        this.contents = List.copyOf(contents);
        this.unbroken = Unbroken.of(style, sizes);
        this.made = made();
    }

    public HouseStyle style() {
        return style;
    }

    /** The labels of the sizes that it is for, in the pattern's order. */
    public List<String> sizes() {
        return sizes;
    }

    /** What it says, in order. */
    public List<Paragraph> paragraphs() {
        return made.stream().flatMap(List::stream).toList();
    }

    /**
     * The same paragraphs as the house style wants them printed: with letters in place of lists that are too long, and
     * the small tables in which the numbers stand.
     */
    public List<Lettered> lettered() {
        return Lettering.of(paragraphs(), style, sizes);
    }

    /** A paragraph in one text, its values listed as the house style does. */
    public String text(Paragraph paragraph) {
        return PlainText.of(paragraph.pieces(), style);
    }

    /**
     * The same text for a layout, see {@link turnheel.engine.wording.NoBreak}: where it has an ordinary blank a line
     * may end, where it has one that does not break none may. Read again it means the same.
     */
    public String unbroken(Paragraph paragraph) {
        return unbroken.text(paragraph.pieces());
    }

    /**
     * The edition for one size: its values alone, without the lines and steps that it does not have.
     *
     * @throws IllegalArgumentException when the text is not for that size; the message lists those that it is for
     */
    public PatternText onlySize(String label) {
        int size = sizes.indexOf(label);
        if (size < 0) {
            throw new IllegalArgumentException("the text is not for a size \"%s\"; it is for %s".formatted(label,
                    String.join(", ", sizes)));
        }
        if (sizes.size() == 1) {
            return this;
        }
        return new PatternText(style, List.of(label),
                contents.stream().flatMap(content -> content.onlySize(size).stream()).toList());
    }

    /** Every paragraph with its texts in the editions for one size; those of a size, in order, are its edition. */
    public List<SizedText> sizedTexts() {
        List<Iterator<List<Paragraph>>> editions =
                sizes.stream().map(label -> onlySize(label).made.iterator()).toList();
        List<SizedText> texts = new ArrayList<>();
        for (int i = 0; i < contents.size(); i++) {
            List<List<String>> ofSizes = new ArrayList<>();
            for (int size = 0; size < sizes.size(); size++) {
                boolean isThere = sizes.size() == 1 || contents.get(i).onlySize(size).isPresent();
                ofSizes.add(isThere ? editions.get(size).next().stream().map(this::text).toList() : List.of());
            }
            boolean isList = contents.get(i) instanceof Content.Abbreviations;
            for (Paragraph paragraph : made.get(i)) {
                String text = text(paragraph);
                texts.add(new SizedText(paragraph.role(), text, ofSizes.stream().map(of -> of.stream()
                        .filter(one -> !isList || one.equals(text)).findFirst()).toList()));
            }
        }
        return texts;
    }

    private List<List<Paragraph>> made() {
        Vocabulary vocabulary = Vocabulary.of(style);
        LineText lines = new LineText(vocabulary, new Lengths(style), sizes);
        return contents.stream().map(content -> switch (content) {
            case Content.Prose(Role role, List<Piece> pieces) -> List.of(new Paragraph(role, pieces));
            case Content.SizeList(List<String> labels) ->
                List.of(new Paragraph(Role.SIZES, sizes(vocabulary, labels)));
            case Content.Told(var line) -> List.of(new Paragraph(Role.INSTRUCTION, lines.of(line)));
            case Content.Abbreviations abbreviations -> abbreviations(vocabulary, lines);
        }).toList();
    }

    private static List<Piece> sizes(Vocabulary vocabulary, List<String> labels) {
        String phrase = labels.size() == 1 ? vocabulary.phraseOfOne("front.sizes") : vocabulary.phrase("front.sizes");
        return Phrase.filled(phrase, List.of(new Piece.Values(labels.stream().map(Optional::of).toList())));
    }

    private List<Paragraph> abbreviations(Vocabulary vocabulary, LineText lines) {
        List<String> told = contents.stream().flatMap(content -> switch (content) {
            case Content.Told(var line) -> Stream.of(PlainText.of(lines.of(line), style));
            case Content.Prose prose when prose.role() == Role.NOTE || prose.role() == Role.GAUGE ->
                Stream.of(PlainText.of(prose.pieces(), style));
            case Content.Prose prose -> Stream.empty();
            case Content.SizeList list -> Stream.empty();
            case Content.Abbreviations abbreviations -> Stream.empty();
        }).toList();
        List<String> used = style.abbreviations() ? Abbreviations.used(vocabulary, told) : List.of();
        List<Paragraph> list = new ArrayList<>();
        if (!used.isEmpty()) {
            list.add(new Paragraph(Role.HEADING, Phrase.words(vocabulary.phrase("heading.abbreviations"))));
            used.forEach(entry -> list.add(new Paragraph(Role.ABBREVIATION, Phrase.words(entry))));
        }
        return list;
    }
}
