package turnheel.exchange.testknit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.writing.Caution;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.Imprint;
import turnheel.exchange.document.Purpose;

/** The sheet that a test knitter prints: what to watch, what the pattern predicts, and room for what was found. */
public final class TestKnitSheet {

    private final Graded graded;
    private final List<Block> blocks = new ArrayList<>();

    private TestKnitSheet(Graded graded) {
        this.graded = graded;
    }

    /** The sheet for some sizes, a page each. */
    public static Document of(Graded graded, List<GradedSize> sizes) {
        return new TestKnitSheet(graded).document(sizes);
    }

    private Document document(List<GradedSize> sizes) {
        for (GradedSize size : sizes) {
            if (!blocks.isEmpty()) {
                blocks.add(new Block.NewPage());
            }
            page(size);
        }
        String title = graded.design().title().isBlank() ? Words.text("untitled") : graded.design().title();
        return new Document(Words.text("sheet.title", title), Words.text("sheet.subject", labels(sizes)),
                Imprint.of(graded.design()), blocks);
    }

    private static String labels(List<GradedSize> sizes) {
        return String.join(", ", sizes.stream().map(GradedSize::label).toList());
    }

    private void page(GradedSize size) {
        List<Item> items = Item.of(graded, size);
        blocks.add(new Block.Heading(1, Words.text("sheet.size", size.label())));
        blocks.add(new Block.Paragraph(Purpose.BODY, Words.text("sheet.how")));
        blocks.add(new Block.Heading(2, Words.text("heading.watch")));
        blocks.add(new Block.Entries(false, List.of(Words.text("watch.swatch"), Words.text("watch.counts"),
                Words.text("watch.try"), Words.text("watch.weigh"), Words.text("watch.text"))));
        table("gauge", EnumSet.of(Item.Kind.GAUGE, Item.Kind.NEEDLE), items);
        table("counts", EnumSet.of(Item.Kind.COUNT), items);
        table("lengths", EnumSet.of(Item.Kind.LENGTH), items);
        table("rest", EnumSet.of(Item.Kind.GRAMS, Item.Kind.HOURS, Item.Kind.WORDS), items);
        Caution.of(graded).stream()
                .filter(caution -> caution.sizes().isEmpty() || caution.sizes().contains(size.label()))
                .forEach(caution -> blocks.add(new Block.Paragraph(Purpose.CAUTION, caution.sentence())));
    }

    private void table(String name, Set<Item.Kind> kinds, List<Item> items) {
        List<Block.Row> rows = items.stream().filter(item -> kinds.contains(item.kind()))
                .map(TestKnitSheet::row).toList();
        blocks.add(new Block.Heading(2, Words.text("heading." + name)));
        blocks.add(new Block.Table(Words.text("caption." + name), List.of(Words.text("head.what"),
                Words.text("head.predicted"), Words.text("head.actual"), Words.text("head.remark")), rows));
    }

    private static Block.Row row(Item item) {
        Block.Cell predicted = item.predicted().isEmpty() ? new Block.Cell.Nothing()
                : new Block.Cell.Figure(Figures.withUnit(item.predicted().getAsDouble(), item.kind()));
        String unit = item.kind().unit();
        return new Block.Row(List.of(
                new Block.Cell.Words(unit.isEmpty() || item.predicted().isPresent() ? item.label()
                        : Words.text("label.unit", item.label(), unit)),
                predicted, new Block.Cell.Blank(), new Block.Cell.Blank()));
    }
}
