package turnheel.engine.grading;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

import turnheel.engine.stitch.Stitch;

/** What a part needs of a count, in words; they are in {@code why.properties}. */
final class NeedWords {

    static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.grading.why");

    private NeedWords() {
    }

    /** The counts of a lattice that has any, from {@code fewest}. */
    static String of(Lattice counts, int fewest) {
        List<String> residues = counts.residues().stream().map(String::valueOf).toList();
        String lattice = residues.size() > 1 ? format("need.any", counts.step(), alternatives(residues))
                : residues.equals(List.of("0")) ? format("need.multiple", counts.step())
                : format("need.congruence", counts.step(), residues.getFirst());
        return fewest > counts.step() ? format("need.fewest", lattice, fewest) : lattice;
    }

    static String of(Need need) {
        return format("need." + need.kind().name().toLowerCase(Locale.ROOT),
                of(Lattice.anyOf(need.counts()), need.fewest()));
    }

    /** Several needs that must all be met. */
    static String of(Collection<Need> needs) {
        return needs.stream().map(NeedWords::of).collect(Collectors.joining(format("need.and")));
    }

    static String of(Stitch stitch) {
        return format("stitch." + stitch.name().toLowerCase(Locale.ROOT));
    }

    private static String alternatives(List<String> words) {
        int last = words.size() - 1;
        return format("need.or", String.join(", ", words.subList(0, last)), words.get(last));
    }

    /** Numbers go in as text, with the digits of the words and not of the machine: exports must not depend on it. */
    static String format(String key, Object... arguments) {
        return MessageFormat.format(WORDS.getString(key), Arrays.stream(arguments).map(Object::toString).toArray());
    }
}
