package turnheel.cli;

import java.util.Arrays;
import java.util.List;

import turnheel.model.Literals;

/** Words of which one can be written. */
final class Choice {

    private Choice() {
    }

    /**
     * The value that a word stands for.
     *
     * @param of what the word was given for, as the person wrote it
     */
    static <E extends Enum<E>> E of(String of, String word, Class<E> kind) throws Refusal {
        List<E> values = Arrays.asList(kind.getEnumConstants());
        int found = position(of, word, values.stream().map(Literals::text).toList());
        return values.get(found);
    }

    /** Refuses a word that is not among the choices. */
    static int position(String of, String word, List<String> choices) throws Refusal {
        int found = choices.indexOf(word);
        if (found < 0) {
            throw new Refusal(UsageErrors.unknownChoice(of, word, choices));
        }
        return found;
    }
}
