package turnheel.exchange.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import turnheel.engine.drawing.Picture;
import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.NoBreak;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.Paragraph;
import turnheel.engine.writing.PatternText;
import turnheel.engine.writing.SmallTable;
import turnheel.exchange.drawing.Drawn;

/** A written pattern with its drawings, ready for a layout: for all sizes, or as an edition of one. */
public final class PatternDocument {

    private final Graded graded;
    private final Optional<String> only;
    private final PatternText text;
    private final List<Block> blocks = new ArrayList<>();

    private PatternDocument(Graded graded, HouseStyle style, Optional<String> only) {
        this.graded = graded;
        this.only = only;
        PatternText all = Manuscripts.write(graded, style);
        this.text = only.map(all::onlySize).orElse(all);
    }

    /**
     * The document of a pattern.
     *
     * @param only label of the only size; empty for all of them
     * @throws IllegalArgumentException when the pattern has no such size
     */
    public static Document of(Graded graded, HouseStyle style, Optional<String> only) {
        return new PatternDocument(graded, style, only).document();
    }

    /** What is drawn of a pattern, and nothing else. */
    public static Document ofDrawing(Graded graded, Drawn drawn) {
        Picture whole = drawn.of(graded);
        return new Document(whole.title(), whole.description(), Imprint.of(graded.design()),
                drawn.each(graded).stream().<Block>map(Block.Drawn::new).toList());
    }

    private Document document() {
        text.lettered().forEach(lettered -> {
            add(lettered.paragraph());
            lettered.tables().forEach(table -> blocks.add(table(table)));
        });
        cautionsFirst();
        blocks.addAll(PatternFigures.of(graded, text.style(), only));
        String title = graded.design().title().isBlank() ? Words.text("untitled") : graded.design().title();
        return new Document(title, subject(), Imprint.of(graded.design()), blocks);
    }

    private String subject() {
        return only.map(size -> Words.text("pattern.subject.one", size))
                .orElseGet(() -> Words.text("pattern.subject", String.join(", ", text.sizes())));
    }

    private void add(Paragraph paragraph) {
        String said = text.unbroken(paragraph);
        switch (paragraph.role()) {
            case TITLE -> {
                // the document's own title says it
            }
            case HEADING -> blocks.add(new Block.Heading(1, said));
            case ABBREVIATION -> abbreviation(said);
            case SIZES -> blocks.add(new Block.Paragraph(Purpose.SIZES, said));
            case MEASUREMENT -> blocks.add(new Block.Paragraph(Purpose.MEASUREMENT, said));
            case MATERIAL -> blocks.add(new Block.Paragraph(Purpose.MATERIAL, said));
            case GAUGE -> blocks.add(new Block.Paragraph(Purpose.GAUGE, said));
            case NOTE -> blocks.add(new Block.Paragraph(Purpose.NOTE, said));
            case INSTRUCTION -> blocks.add(new Block.Paragraph(Purpose.INSTRUCTION, said));
            case CAUTION -> blocks.add(new Block.Paragraph(Purpose.CAUTION, said));
        }
    }

    private static Block.Table table(SmallTable small) {
        List<String> head = new ArrayList<>(List.of(small.sizeHeading()));
        head.addAll(small.letters());
        List<Block.Row> rows = new ArrayList<>();
        for (SmallTable.Row row : small.rows()) {
            List<Block.Cell> cells = new ArrayList<>(List.of(new Block.Cell.Words(NoBreak.whole(row.size()))));
            row.values().forEach(value -> cells.add(new Block.Cell.Figure(NoBreak.whole(value))));
            rows.add(new Block.Row(cells));
        }
        return new Block.Table(small.caption(), head, rows);
    }

    /** An entry such as {@code yo: yarn over}; neighbours make one list. */
    private void abbreviation(String entry) {
        int colon = entry.indexOf(": ");
        Block.Term term = new Block.Term(entry.substring(0, colon), entry.substring(colon + 2));
        List<Block.Term> terms = new ArrayList<>();
        if (!blocks.isEmpty() && blocks.getLast() instanceof Block.Terms(List<Block.Term> before)) {
            terms.addAll(before);
            blocks.removeLast();
        }
        terms.add(term);
        blocks.add(new Block.Terms(terms));
    }

    /** What can hurt is read before anything is knitted: it goes before the first section. */
    private void cautionsFirst() {
        int first = IntStream.range(0, blocks.size()).filter(place -> isCaution(blocks.get(place))).findFirst().orElse(0);
        if (first == 0) {
            return;
        }
        int last = first;
        while (last < blocks.size() && isCaution(blocks.get(last))) {
            last++;
        }
        List<Block> section = blocks.subList(first - 1, last);
        List<Block> cautions = List.copyOf(section);
        section.clear();
        int front = IntStream.range(0, blocks.size()).filter(place -> blocks.get(place) instanceof Block.Heading)
                .findFirst().orElse(blocks.size());
        blocks.addAll(front, cautions);
    }

    private static boolean isCaution(Block block) {
        return block instanceof Block.Paragraph(Purpose purpose, String caution) && purpose == Purpose.CAUTION;
    }
}
