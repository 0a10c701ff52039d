package turnheel.engine.grading;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.ResourceBundle;

/** What a part needs of a count, in words; they are in {@code why.properties}. */
final class NeedWords {

    static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.grading.why");

    private NeedWords() {
    }

    static String of(Congruence counts, int fewest) {
        String lattice = counts.residue() == 0 ? format("need.multiple", counts.step())
                : format("need.congruence", counts.step(), counts.residue());
        return fewest > counts.step() ? format("need.fewest", lattice, fewest) : lattice;
    }

    static String of(Need need) {
        return format("need." + need.kind().name().toLowerCase(java.util.Locale.ROOT), of(need.counts(), need.fewest()));
    }

    /** Numbers go in as text, with the digits of the words and not of the machine: exports must not depend on it. */
    static String format(String key, Object... arguments) {
        return MessageFormat.format(WORDS.getString(key), Arrays.stream(arguments).map(Object::toString).toArray());
    }
}
