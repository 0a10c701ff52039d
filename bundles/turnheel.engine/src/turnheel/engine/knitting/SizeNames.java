package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The names of the sizes, and which of them a line is for. */
final class SizeNames {

    /** Words before the colon of such a line. */
    private static final int LONGEST_PREFIX = 60;

    /**
     * A line is only for some sizes.
     *
     * @param sizes by their place; empty: for all
     * @param end the word after the prefix
     */
    record Prefix(Set<Integer> sizes, int end) {
    }

    private final ReadingWords table;
    private final List<String> names;

    SizeNames(List<String> names, ReadingWords table) {
        this.names = List.copyOf(names);
        this.table = table;
    }

    List<String> names() {
        return names;
    }

    /** The names in a list such as {@code XS (S, M, L)}. */
    static List<String> listed(List<Word> words) {
        List<String> names = new ArrayList<>();
        StringBuilder name = new StringBuilder();
        for (Word word : words) {
            boolean ends = word.kind() == Word.Kind.SIGN && "(),;/|.".contains(word.text()) || word.is("and");
            if (ends) {
                addTo(names, name);
                if (word.is(".")) {
                    break;
                }
            } else {
                name.append(name.isEmpty() || word.glued() ? "" : " ").append(word.raw());
            }
        }
        addTo(names, name);
        return names;
    }

    private static void addTo(List<String> names, StringBuilder name) {
        if (!name.isEmpty()) {
            names.add(name.toString());
            name.setLength(0);
        }
    }

    /** What stands before a colon or the word <em>only</em>, if it names sizes; empty when the line begins otherwise. */
    Optional<Prefix> prefix(List<Word> words, int first) {
        int at = first;
        if (at < words.size() && words.get(at).is("for")) {
            at++;
        }
        boolean all = at < words.size() && table.list("all").contains(words.get(at).text());
        if (all) {
            at++;
        }
        if (at >= words.size() || !table.list("sizes").contains(words.get(at).text())) {
            return Optional.empty();
        }
        int end = at + 1;
        while (end < Math.min(words.size(), first + LONGEST_PREFIX) && !isEnd(words.get(end))) {
            end++;
        }
        if (end >= words.size() || !isEnd(words.get(end))) {
            return Optional.empty();
        }
        Set<Integer> sizes = new TreeSet<>();
        for (String name : listed(words.subList(at + 1, end))) {
            int size = place(name);
            if (size < 0) {
                return Optional.empty();
            }
            sizes.add(size);
        }
        if (sizes.isEmpty() != all) {
            return Optional.empty();
        }
        int after = end + 1;
        while (after < words.size() && (words.get(after).is(":") || words.get(after).is(","))) {
            after++;
        }
        return Optional.of(new Prefix(sizes, after));
    }

    private boolean isEnd(Word word) {
        return word.is(":") || table.list("only").contains(word.text());
    }

    private int place(String name) {
        for (int size = 0; size < names.size(); size++) {
            if (names.get(size).toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT))) {
                return size;
            }
        }
        return -1;
    }
}
