package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Quantity;
import turnheel.model.pattern.EntryElement;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.SizeElement;

class DocumentsTest {

    private final SizeElement size = PatternFactory.eINSTANCE.createSizeElement();

    @ParameterizedTest(name = "\"{0}\" beside {1} is {2}")
    @CsvSource(nullValues = "-", textBlock = """
            # label, taken, id
            M,           '',          m
            M,           m l,         m-2
            M,           m m-2,       m-3
            38/39,       '',          38-39
            Adult L (wide), '',       adult-l-wide
            靴下,         '',          size
            靴下,         size,        size-2
            ' ',         '',          size
            """)
    void idsComeFromTheLabel(String label, String taken, String id) {
        assertEquals(id, Documents.sizeId(label, List.of(taken.split(" "))));
    }

    @Test
    void entriesStandInTheOrderOfTheCatalogueHoweverTheyWereSet() {
        List<String> backwards = Catalogue.all().reversed().stream().map(parameter -> parameter.key().name()).toList();
        backwards.forEach(key -> Documents.setInput(size, Patterns.key(key), Quantity.parse("1")));
        assertEquals(backwards.reversed(), size.getInputs().stream().map(entry -> entry.getKey().name()).toList());
    }

    @Test
    void aKeyIsSetOnce() {
        Documents.setOverride(size, Patterns.key("foot.stitches"), Quantity.parse("64"));
        Documents.setOverride(size, Patterns.key("foot.stitches"), Quantity.parse("68"));
        assertEquals(Map.of(Patterns.key("foot.stitches"), Quantity.parse("68")), Map.of(
                size.getOverrides().getFirst().getKey(), size.getOverrides().getFirst().getValue()));
        assertEquals(1, size.getOverrides().size());
    }

    @Test
    void nullTakesAKeyAwayAndNoOther() {
        Documents.setInput(size, Patterns.key("body.footLength"), Quantity.parse("240 mm"));
        Documents.setInput(size, Patterns.key("body.legHeight"), Quantity.parse("200 mm"));
        Documents.setInput(size, Patterns.key("body.footLength"), null);
        Documents.setInput(size, Patterns.key("body.footCircumference"), null);
        assertEquals(List.of("body.legHeight"), size.getInputs().stream().map(EntryElement::getKey)
                .map(Object::toString).toList());
    }

    @Test
    void theNewDocumentDescribesTheDesign() throws DocumentException {
        assertEquals(Patterns.harbour(), Door.design(Documents.pattern(Patterns.harbour())));
    }
}
