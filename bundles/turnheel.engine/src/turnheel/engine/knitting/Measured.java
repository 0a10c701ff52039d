package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;

/**
 * Values with a unit, as in {@code 20 (23, 25.5) cm}.
 *
 * @param values one, or one for each size
 * @param unit cm, mm, inch, g or another that the vocabulary lists
 * @param name the words before it, in small letters
 * @param span where it stands
 * @param pairs whether it gives the values before it in another unit
 */
record Measured(List<Double> values, String unit, String name, Span span, boolean pairs) {

    private static final double MM_PER_INCH = 25.4;

    Measured {
        values = List.copyOf(values);
    }

    /** All that a paragraph has, in its order. */
    static List<Measured> in(List<Word> words, ReadingWords table) {
        List<Measured> found = new ArrayList<>();
        StringBuilder name = new StringBuilder();
        int lastEnd = -1;
        for (int at = 0; at < words.size();) {
            Word word = words.get(at);
            if (word.kind() != Word.Kind.NUMBER) {
                if (word.is(";") || word.is(".")) {
                    name.setLength(0);
                } else if (word.kind() == Word.Kind.LETTERS) {
                    name.append(' ').append(word.text());
                }
                at++;
                continue;
            }
            List<Double> values = new ArrayList<>();
            int end = values(words, at, values);
            boolean unit = end < words.size() && table.list("measure").contains(words.get(end).text());
            if (unit) {
                boolean pairs = lastEnd >= 0 && lastEnd == at - 1
                        && (words.get(at - 1).is("/") || words.get(at - 1).is("(") || words.get(at - 1).is("or"));
                found.add(new Measured(values, words.get(end).text(), name.toString().strip(),
                        Span.of(words.subList(at, end + 1)), pairs));
                lastEnd = end + 1;
            }
            at = unit ? end + 1 : end;
        }
        return found;
    }

    /** A number and those in brackets or after strokes; the word after them. */
    private static int values(List<Word> words, int first, List<Double> values) {
        values.add(words.get(first).number());
        int at = first + 1;
        boolean open = false;
        while (at < words.size()) {
            Word word = words.get(at);
            boolean value = word.kind() == Word.Kind.NUMBER;
            boolean opens = word.is("(") && at + 1 < words.size() && words.get(at + 1).kind() == Word.Kind.NUMBER;
            boolean separates = (open && (word.is(",") || word.is(";") || word.is(":")) || word.is("/"))
                    && at + 1 < words.size() && words.get(at + 1).kind() == Word.Kind.NUMBER;
            if (!value && !opens && !separates && !(open && word.is(")"))) {
                break;
            }
            if (value && !open && !words.get(at - 1).is("/") && !words.get(at - 1).is(")")) {
                break;
            }
            if (value) {
                values.add(word.number());
            }
            open = opens || open && !word.is(")");
            at++;
        }
        return at;
    }

    boolean isLength() {
        return mmPerUnit() > 0;
    }

    private double mmPerUnit() {
        return switch (unit) {
            case "cm" -> 10;
            case "mm" -> 1;
            case "inch", "in" -> MM_PER_INCH;
            default -> 0;
        };
    }

    /** The value of a size in mm; that of all where it has one only. */
    double mm(int size) {
        return values.get(values.size() == 1 ? 0 : size) * mmPerUnit();
    }

    boolean fits(int sizes) {
        return values.size() == 1 || values.size() == sizes;
    }

    /** Half of the step to which the values are printed, in mm. */
    double halfStepMm() {
        boolean inches = mmPerUnit() == MM_PER_INCH;
        if (inches) {
            return 0.125 * MM_PER_INCH;
        }
        return mmPerUnit() * (printedTo(1) ? 0.5 : printedTo(0.5) ? 0.25 : 0.05);
    }

    private boolean printedTo(double step) {
        return values.stream().allMatch(value -> Math.abs(value / step - Math.rint(value / step)) < 1e-9);
    }

    /** A length in its unit, for a query. */
    String written(double mm) {
        double value = mm / mmPerUnit();
        return Double.toString(Math.rint(value * 10) / 10).replaceFirst("\\.0$", "");
    }
}
