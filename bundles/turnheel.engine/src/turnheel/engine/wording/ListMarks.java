package turnheel.engine.wording;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * The marks of a list of values, one for each size, as in {@code 56 (64, 72, 80)}. With groups the sizes after the first
 * stand in brackets of their own, as in {@code 56 (60, 64, 68) (72, 76, 80) (84, 88, 92)}, so that an eye that looks for
 * the sixth size finds it (common practice).
 *
 * @param opening before the second of several values
 * @param separator between further values
 * @param closing after the last of several values
 * @param group the most values that one pair of brackets encloses, at least 2; 0: all of them
 */
public record ListMarks(String opening, String separator, String closing, int group) {

    public ListMarks {
        if (group == 1 || group < 0) {
            throw new IllegalArgumentException("group (%d) must be 0 or at least 2".formatted(group));
        }
    }

    /** The values in one text. */
    public String list(List<String> values) {
        return list(values, opening, opening, separator, closing, UnaryOperator.identity());
    }

    /**
     * The same for a layout: a line may end after a separator and between brackets, and nowhere else. The first value
     * stays with the second.
     */
    public String unbroken(List<String> values) {
        String after = separator.stripTrailing();
        String breaking = NoBreak.whole(after) + (after.equals(separator) ? NoBreak.BREAK : " ");
        boolean parted = opening.isEmpty() || opening.isBlank() || closing.isEmpty();
        return list(values, parted ? breakAfter(opening) : NoBreak.whole(opening), breakBefore(opening), breaking,
                NoBreak.whole(closing), NoBreak::whole);
    }

    /** An opening without brackets parts values like a separator, as in {@code 56/64/72}. */
    private static String breakAfter(String opening) {
        return opening.isBlank() ? " " : NoBreak.whole(opening.strip()) + NoBreak.BREAK;
    }

    private static String breakBefore(String opening) {
        return (opening.startsWith(" ") ? " " : String.valueOf(NoBreak.BREAK)) + NoBreak.whole(opening.stripLeading());
    }

    private String list(List<String> values, String first, String next, String between, String end,
            UnaryOperator<String> value) {
        StringBuilder list = new StringBuilder(value.apply(values.getFirst()));
        int others = values.size() - 1;
        int groups = group == 0 ? Math.min(1, others) : Math.ceilDiv(others, group);
        int from = 1;
        for (int number = 0; number < groups; number++) {
            // as even as can be, the larger ones first: a last bracket with a single value would look like a slip
            int to = from + Math.ceilDiv(values.size() - from, groups - number);
            list.append(number == 0 ? first : next).append(values.subList(from, to).stream().map(value)
                    .collect(Collectors.joining(between))).append(end);
            from = to;
        }
        return list.toString();
    }
}
