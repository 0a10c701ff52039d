package turnheel.exchange.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.wording.NoBreak;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.PatternText;
import turnheel.engine.writing.Role;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class PatternDocumentTest {

    private static final Graded GRADED = Patterns.grade(Designs.toeUp());

    @Test
    void saysWhatThePatternSaysInItsOrder() {
        PatternText text = Manuscripts.write(GRADED, HouseStyles.usual());

        assertEquals(instructions(text), instructions(PatternDocument.of(GRADED, HouseStyles.usual(), Optional.empty())));
    }

    @Test
    void anEditionOfOneSizeSaysWhatConcernsIt() {
        String label = GRADED.sizes().getLast().label();
        Document one = PatternDocument.of(GRADED, HouseStyles.usual(), Optional.of(label));

        assertTrue(one.subject().contains(label), one.subject());
        assertEquals(instructions(Manuscripts.write(GRADED, HouseStyles.usual()).onlySize(label)), instructions(one));
    }

    @Test
    void aRowOfATableHasACellUnderEveryHeading() {
        List<Block.Row> rows = List.of(new Block.Row(List.of(new Block.Cell.Words("M"))));
        assertThrows(IllegalArgumentException.class, () -> new Block.Table("Counts", List.of("Size", "Foot"), rows));
    }

    private static List<String> instructions(PatternText text) {
        return text.paragraphs().stream().filter(paragraph -> paragraph.role() == Role.INSTRUCTION).map(text::text)
                .toList();
    }

    private static List<String> instructions(Document document) {
        return document.blocks().stream()
                .filter(block -> block instanceof Block.Paragraph(Purpose purpose, String text)
                        && purpose == Purpose.INSTRUCTION)
                .map(block -> NoBreak.ordinary(((Block.Paragraph) block).text())).toList();
    }
}
