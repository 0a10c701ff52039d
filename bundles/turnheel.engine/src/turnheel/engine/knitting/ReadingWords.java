package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;

import turnheel.engine.knitting.grammar.Instructions;
import turnheel.engine.stitch.Stitch;

/** What words mean to a reader: {@code reading.properties}. */
final class ReadingWords {

    /** What a phrase stands for: a token of the grammar and, for a stitch, which. */
    record Meaning(int token, Stitch stitch) {
    }

    static final ReadingWords ENGLISH = new ReadingWords(ResourceBundle.getBundle("turnheel.engine.wording.reading"));

    private final Map<String, String> canonical = new HashMap<>();
    private final Set<String> leftOut = new HashSet<>();
    private final Map<String, String> numbers = new HashMap<>();
    private final Map<String, List<String>> lists = new HashMap<>();
    private final Phrases<Meaning> phrases = new Phrases<>();

    private ReadingWords(ResourceBundle words) {
        Set<String> keys = new TreeSet<>(words.keySet());
        for (String key : keys) {
            String text = words.getString(key);
            if (key.equals("left-out")) {
                leftOut.addAll(List.of(text.split(" ")));
            } else if (key.startsWith("word.")) {
                for (String form : text.split(" ")) {
                    canonical.put(form, key.substring("word.".length()));
                }
            } else if (key.startsWith("number.")) {
                numbers.put(key.substring("number.".length()), text);
            } else if (key.startsWith("list.")) {
                lists.put(key.substring("list.".length()), List.of(text.split("\\|")));
            }
        }
        for (String key : keys) {
            if (key.startsWith("token.")) {
                add(words.getString(key), new Meaning(token(key.substring("token.".length())), Stitch.KNIT));
            } else if (key.startsWith("stitch.")) {
                Stitch stitch = Stitch.valueOf(key.substring("stitch.".length()));
                add(words.getString(key), new Meaning(Instructions.STITCH, stitch));
            }
        }
    }

    private static int token(String name) {
        for (int type = 0; type <= Instructions.VOCABULARY.getMaxTokenType(); type++) {
            if (name.equals(Instructions.VOCABULARY.getSymbolicName(type))) {
                return type;
            }
        }
        throw new IllegalArgumentException("the grammar has no token %s".formatted(name));
    }

    private void add(String forms, Meaning meaning) {
        for (String form : forms.split("\\|")) {
            phrases.add(words(form), meaning);
        }
    }

    /** The words of a phrase as a text is compared with them. */
    List<String> words(String phrase) {
        List<String> words = new ArrayList<>();
        for (Word word : new Scanner(this).words(phrase)) {
            words.add(word.text());
        }
        return words;
    }

    /** The word that all forms of it are read as. */
    String canonical(String word) {
        return canonical.getOrDefault(word, numbers.getOrDefault(word, word));
    }

    boolean isLeftOut(String word) {
        return leftOut.contains(word);
    }

    Phrases<Meaning> phrases() {
        return phrases;
    }

    /** A list of words or phrases by its name. */
    List<String> list(String name) {
        return lists.getOrDefault(name, List.of());
    }
}
