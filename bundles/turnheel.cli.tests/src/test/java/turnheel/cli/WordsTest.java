package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WordsTest {

    @Test
    void everyWordHasItsTextAndEveryTextItsWord() {
        Set<String> words = Arrays.stream(Words.values()).map(Words::name).collect(Collectors.toSet());
        Set<String> texts = ResourceBundle.getBundle("turnheel.cli.words").keySet();
        assertEquals(words, texts);
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource
    void everySentenceCanBeFilledIn(Words words) {
        String sentence = words.with("<1000>", "<b>", "<c>", "<d>");
        assertTrue(!sentence.isBlank() && !sentence.contains("{"), sentence);
    }

    @Test
    void numbersStandWithoutSeparators() {
        assertEquals("errors: 1234, warnings: 5", Words.CHECK_SUMMARY.with(1234, 5));
    }
}
