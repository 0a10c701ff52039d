package turnheel.engine.design;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word that somebody most likely meant. Upper and lower case are alike. */
public final class Spelling {

    /** One slip of the pen for every three letters; further away a suggestion would only puzzle. */
    private static final int LETTERS_PER_SLIP = 3;

    private Spelling() {
    }

    /** The closest of the words, when it is close enough to be meant; the first of several that are equally close. */
    public static Optional<String> suggestion(String mistyped, Collection<String> words) {
        // A single letter could be mistyped into any other.
        int slips = mistyped.length() < 2 ? 0 : Math.max(1, mistyped.length() / LETTERS_PER_SLIP);
        return words.stream().min(Comparator.comparingInt(word -> distance(mistyped, word)))
                .filter(word -> distance(mistyped, word) <= slips);
    }

    /** The closest of the words, however far it is; the first of several that are equally close. */
    public static String nearest(String mistyped, Collection<String> words) {
        return words.stream().min(Comparator.comparingInt(word -> distance(mistyped, word))).orElseThrow();
    }

    /** Letters to insert, drop or replace, or neighbours to swap, until the one word is the other. */
    static int distance(String one, String other) {
        int[][] edits = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    edits[i][j] = i + j;
                    continue;
                }
                int replaced = edits[i - 1][j - 1] + (same(one, i - 1, other, j - 1) ? 0 : 1);
                edits[i][j] = Math.min(replaced, Math.min(edits[i - 1][j], edits[i][j - 1]) + 1);
                if (i > 1 && j > 1 && same(one, i - 1, other, j - 2) && same(one, i - 2, other, j - 1)) {
                    edits[i][j] = Math.min(edits[i][j], edits[i - 2][j - 2] + 1);
                }
            }
        }
        return edits[one.length()][other.length()];
    }

    private static boolean same(String one, int i, String other, int j) {
        return Character.toLowerCase(one.charAt(i)) == Character.toLowerCase(other.charAt(j));
    }
}
