package turnheel.engine.knitting;

import java.util.List;
import java.util.Optional;

import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.Label;
import turnheel.engine.instruction.Line.Side;
import turnheel.engine.instruction.Sized;
import turnheel.engine.knitting.grammar.Instructions;
import turnheel.engine.knitting.grammar.Instructions.DecorationContext;
import turnheel.engine.knitting.grammar.Instructions.LabelContext;

/** Labels of rounds, as in {@code Rnds 3-5 (3-5, 3-6)}, {@code Row 1 (RS)} or {@code Inc rnd}. */
final class Labels {

    /** Words before the colon of a label. */
    private static final int LONGEST_LABEL = 80;

    /** Words of a name. */
    private static final int LONGEST_NAME = 6;

    private Labels() {
    }

    /**
     * A label and what else is told with it.
     *
     * @param alternate whether it stands for every second round after it too
     */
    record Read(Label label, boolean alternate) {
    }

    /** Whether the words before a colon end with round or row, or begin with it. */
    static boolean startsLabel(List<Word> words) {
        return colon(words, 0) > 0;
    }

    /** The same, but only with a number: what explains the word round is no label. */
    static boolean startsNumberedLabel(List<Word> words) {
        int colon = colon(words, 0);
        return colon > 1 && isFabric(words.getFirst()) && words.get(1).kind() == Word.Kind.NUMBER;
    }

    /** Where the colon of a label that begins at {@code first} is; -1 when no label does. */
    static int colon(List<Word> words, int first) {
        boolean fabric = false;
        for (int at = first; at < Math.min(words.size(), first + LONGEST_LABEL); at++) {
            Word word = words.get(at);
            if (word.is(":") && fabric) {
                return at;
            }
            if (word.is(".") || word.is(";") || word.is("*") || word.is(":")) {
                return -1;
            }
            fabric |= isFabric(word) && at - first <= LONGEST_NAME;
        }
        return -1;
    }

    private static boolean isFabric(Word word) {
        return word.is("rnd") || word.is("row");
    }

    /** Remembers the names that are given to rounds from {@code first} to the colon. */
    static void collectNames(List<Word> words, int first, int colon, Phrases<String> names) {
        int start = first;
        for (int at = first; at < colon; at++) {
            Word word = words.get(at);
            if (word.is("(")) {
                start = at + 1;
            } else if (isFabric(word) && at > start && words.get(at + 1).kind() != Word.Kind.NUMBER
                    && isName(words.subList(start, at))) {
                List<String> name = words.subList(start, at + 1).stream().map(Word::text).toList();
                names.add(name, String.join(" ", name));
            }
        }
    }

    private static boolean isName(List<Word> words) {
        return words.size() <= LONGEST_NAME && words.stream().allMatch(word -> word.kind() == Word.Kind.LETTERS)
                && words.stream().noneMatch(Labels::isFabric);
    }

    static Read read(LabelContext label, SizedReader sized) {
        Optional<Side> side = Optional.empty();
        Optional<String> name = Optional.empty();
        boolean alternate = label.alternate() != null;
        for (DecorationContext decoration : label.decoration()) {
            boolean wrong = SizedReader.has(decoration, Instructions.WRONG_SIDE)
                    || decoration.decorated() != null && decoration.decorated().WRONG_SIDE() != null;
            boolean right = SizedReader.has(decoration, Instructions.RIGHT_SIDE)
                    || decoration.decorated() != null && decoration.decorated().RIGHT_SIDE() != null;
            side = wrong ? Optional.of(Side.WRONG) : right ? Optional.of(Side.RIGHT) : side;
            if (decoration.decorated() != null && decoration.decorated().NAME() != null) {
                name = Optional.of(((ReadToken) decoration.decorated().NAME().getSymbol()).name());
            }
            alternate |= decoration.decorated() != null && decoration.decorated().alternate() != null;
        }
        if (label.NAME() != null) {
            ReadToken token = (ReadToken) label.NAME().getSymbol();
            Fabric fabric = token.last().is("row") ? Fabric.ROW : Fabric.ROUND;
            return new Read(new Label(fabric, Optional.empty(), Optional.empty(), Optional.of(token.name()), side), false);
        }
        List<Sized<Integer>> ranges = sized.ranges(label.ranges());
        Fabric fabric = label.ROW() != null ? Fabric.ROW : Fabric.ROUND;
        Label numbered = new Label(fabric, Optional.of(ranges.getFirst()), Optional.of(ranges.getLast()), name, side);
        return new Read(numbered, alternate);
    }
}
