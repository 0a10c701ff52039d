package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.wording.Vocabulary;

/** Which of the vocabulary's abbreviations a text uses. */
final class Abbreviations {

    private static final String PREFIX = "abbreviation.";
    /** A word of the trade, with the count that follows some of them. */
    private static final Pattern WORD = Pattern.compile("(\\p{L}+(?:[&\\d]*\\p{L}+)*)\\d*");

    private Abbreviations() {
    }

    /**
     * The entries of the abbreviations that the texts use, in alphabetical order, as in {@code k2tog: knit 2
     * together}.
     */
    static List<String> used(Vocabulary vocabulary, List<String> texts) {
        Set<String> words = new HashSet<>();
        for (String text : texts) {
            Matcher matcher = WORD.matcher(text);
            while (matcher.find()) {
                words.add(matcher.group(1).toLowerCase(Locale.ROOT));
            }
        }
        List<String> entries = new ArrayList<>();
        vocabulary.beginningWith(PREFIX).forEach((forms, entry) -> {
            for (String form : forms.split("\\.")) {
                if (words.contains(form)) {
                    entries.add(entry);
                    break;
                }
            }
        });
        return List.copyOf(entries);
    }
}
