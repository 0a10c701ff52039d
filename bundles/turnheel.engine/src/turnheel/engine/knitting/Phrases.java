package turnheel.engine.knitting;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.jdt.annotation.Nullable;

/** Phrases of words and what each of them means; the longest that fits is meant. */
final class Phrases<T> {

    /** What a phrase means, and how many words it has. */
    record Found<T>(T meaning, int words) {
    }

    private static final class Node<T> {
        private final Map<String, Node<T>> next = new HashMap<>();
        private @Nullable T meaning;
    }

    private final Node<T> root = new Node<>();

    void add(List<String> words, T meaning) {
        Node<T> node = root;
        for (String word : words) {
            node = node.next.computeIfAbsent(word, absent -> new Node<>());
        }
        node.meaning = meaning;
    }

    /** The longest phrase that begins with the word at {@code first}; null when there is none. */
    @Nullable
    Found<T> longest(List<Word> words, int first) {
        @Nullable Node<T> node = root;
        @Nullable Found<T> found = null;
        for (int i = first; i < words.size(); i++) {
            node = node.next.get(words.get(i).text());
            if (node == null) {
                return found;
            }
            T meaning = node.meaning;
            if (meaning != null) {
                found = new Found<>(meaning, i - first + 1);
            }
        }
        return found;
    }
}
