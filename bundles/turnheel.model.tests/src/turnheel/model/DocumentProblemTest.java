package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.ResourceBundle;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import turnheel.model.DocumentProblem.Kind;

class DocumentProblemTest {

    @ParameterizedTest
    @EnumSource
    void everyKindHasASentenceWithItsValues(Kind kind) {
        String sentence = new DocumentProblem(kind, 1, 1, List.of("ONE", "TWO", "THREE")).sentence();
        String words = ResourceBundle.getBundle("turnheel.model.problems").getString(kind.name());
        assertFalse(sentence.isBlank() || sentence.contains("{"), sentence);
        assertEquals(words.contains("{0}"), sentence.contains("ONE"), sentence);
        assertEquals(words.contains("{1}"), sentence.contains("TWO"), sentence);
        assertEquals(words.contains("{2}"), sentence.contains("THREE"), sentence);
    }

    @Test
    void takesValuesAsTheyAre() {
        assertTrue(new DocumentProblem(Kind.REPEATED, 1, 1, List.of("{0} 'quoted' {9}")).sentence()
                .startsWith("\"{0} 'quoted' {9}\" "));
    }

    @Test
    void theMessageNamesFileAndPlace() {
        DocumentProblem problem = new DocumentProblem(Kind.REPEATED, 8, 3, List.of("toe"));
        assertEquals("a.turnheel:8:3: \"toe\" is there more than once. Keep one.",
                new DocumentException("a.turnheel", List.of(problem)).getMessage());
    }
}
