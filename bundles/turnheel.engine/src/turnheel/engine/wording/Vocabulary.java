package turnheel.engine.wording;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.TreeMap;

/** The phrases of a house style: {@code vocabulary.properties}, with what the style replaces. */
public final class Vocabulary {

    private static final String TABLE = "turnheel.engine.wording.vocabulary";

    private final Map<String, String> phrases;

    private Vocabulary(Map<String, String> phrases) {
        this.phrases = Collections.unmodifiableMap(phrases);
    }

    /** The words that a house style prints. */
    public static Vocabulary of(HouseStyle style) {
        Map<String, String> phrases = table(TABLE);
        if (!style.abbreviations()) {
            phrases.putAll(table(TABLE + "-words"));
        }
        if (style.english() == HouseStyle.English.UK) {
            phrases.putAll(table(TABLE + "-uk"));
            if (!style.abbreviations()) {
                phrases.putAll(table(TABLE + "-uk-words"));
            }
        }
        phrases.putAll(style.words());
        return new Vocabulary(phrases);
    }

    private static Map<String, String> table(String name) {
        ResourceBundle words = ResourceBundle.getBundle(name);
        Map<String, String> table = new TreeMap<>();
        words.keySet().forEach(key -> table.put(key, words.getString(key)));
        return table;
    }

    /** Whether a style may replace this phrase. */
    static boolean knows(String key) {
        return ResourceBundle.getBundle(TABLE).containsKey(key);
    }

    /**
     * The phrase of this key, with its places {@code {0}}, {@code {1}} …
     *
     * @throws IllegalArgumentException when there is none
     */
    public String phrase(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("the vocabulary has no \"%s\"".formatted(key)));
    }

    /** The phrase of this key, where there is one. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(phrases.get(key));
    }

    /** The phrase of this key where it tells of one thing, if that differs; else the phrase for any number. */
    public String phraseOfOne(String key) {
        return find(key + ".once").orElseGet(() -> phrase(key));
    }

    /** All phrases whose key begins with {@code prefix}, by the rest of their key, in alphabetical order. */
    public Map<String, String> beginningWith(String prefix) {
        Map<String, String> found = new TreeMap<>();
        phrases.forEach((key, phrase) -> {
            if (key.startsWith(prefix)) {
                found.put(key.substring(prefix.length()), phrase);
            }
        });
        return found;
    }
}
