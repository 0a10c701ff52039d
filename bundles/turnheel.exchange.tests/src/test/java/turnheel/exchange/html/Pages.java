package turnheel.exchange.html;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import turnheel.engine.drawing.OutlineDrawing;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Block.Cell;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.PatternDocument;
import turnheel.exchange.document.Purpose;

/** Documents that pages are tried on. */
final class Pages {

    private Pages() {
    }

    /** One of each kind: patterns that differ in what they hold, an edition of one size, and every block there is. */
    static Map<String, Document> all() {
        Map<String, Document> all = new LinkedHashMap<>();
        all.put("toe-up", pattern("toe-up", Optional.empty()));
        all.put("one-size", pattern("star-and-flap", Optional.of("M")));
        all.put("twelve", pattern("twelve", Optional.empty()));
        all.put("colours", pattern("colours", Optional.empty()));
        all.put("missing", pattern("missing", Optional.empty()));
        all.put("blocks", everyBlock());
        return all;
    }

    static Document pattern(String name, Optional<String> size) {
        return PatternDocument.of(Patterns.grade(Designs.all().get(name)), HouseStyles.usual(), size);
    }

    /** Every block, every purpose, every cell, and a sheet to fill in. */
    static Document everyBlock() {
        var picture = OutlineDrawing.of(Patterns.grade(Designs.toeUp()), "M");
        return new Document("Every block", "A sheet with one of each", List.of("Made by hand."), List.of(
                new Block.Heading(1, "Texts"), new Block.Paragraph(Purpose.BODY, "Running text."),
                new Block.Paragraph(Purpose.SIZES, "Sizes: S (M, L)"),
                new Block.Paragraph(Purpose.MEASUREMENT, "Finished: 18 (19, 20) cm"),
                new Block.Paragraph(Purpose.MATERIAL, "Yarn: 200 m"), new Block.Paragraph(Purpose.GAUGE, "Gauge: 32 sts"),
                new Block.Paragraph(Purpose.NOTE, "Note: work two socks alike."),
                new Block.Paragraph(Purpose.INSTRUCTION, "Rnd 1: K to end."),
                new Block.Paragraph(Purpose.CAUTION, "Soles slip."),
                new Block.Heading(2, "Lists"), new Block.Entries(false, List.of("one", "another")),
                new Block.Heading(3, "In order"), new Block.Entries(true, List.of("first", "second")),
                new Block.Terms(List.of(new Block.Term("k", "knit"), new Block.Term("p", "purl"))),
                new Block.NewPage(), new Block.Heading(1, "Tables"),
                new Block.Table("To fill in", List.of("", "Said", "Found", "Remarks"), List.of(
                        new Block.Row(List.of(new Cell.Words("Gauge"), new Cell.Figure("32 sts"), new Cell.Blank(),
                                new Cell.Nothing())),
                        new Block.Row(List.of(new Cell.Figure("2"), new Cell.Figure("7 1/2 in"), new Cell.Blank(),
                                new Cell.Words("as it comes"))),
                        new Block.Row(List.of(new Cell.Blank(), new Cell.Nothing(), new Cell.Blank(),
                                new Cell.Blank())))),
                new Block.Heading(1, "Pictures"), new Block.Drawn(picture), new Block.Drawn(picture)));
    }

    static String text(Document document) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            HtmlWriter.write(document, out);
            return out.toString(StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
