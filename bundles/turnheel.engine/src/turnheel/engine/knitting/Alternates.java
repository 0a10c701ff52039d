package turnheel.engine.knitting;

import java.util.Optional;
import java.util.OptionalInt;

import org.eclipse.jdt.annotation.Nullable;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Line.Label;
import turnheel.engine.instruction.Sized;

/** Rounds that a text tells once for all even or odd numbers: they are missing where the numbers jump over them. */
final class Alternates {

    private Line.@Nullable Worked alternate;
    private boolean awaited;
    private int parity;
    private int last;

    void clear() {
        alternate = null;
        awaited = false;
        last = 0;
    }

    void label(Labels.Read read) {
        OptionalInt number = number(read.label());
        awaited = read.alternate() && number.isPresent();
        if (awaited) {
            parity = number.getAsInt() % 2;
        }
    }

    void worked(Line.Worked line) {
        if (awaited) {
            alternate = line;
            awaited = false;
        }
        line.label().flatMap(Label::to).flatMap(to -> to.get(0)).ifPresent(to -> last = to);
    }

    private static OptionalInt number(Label label) {
        return label.from().filter(Sized::isShared).flatMap(from -> from.get(0)).map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    /** The round that lies between the last one and this label, if it was told so. */
    Optional<Line> missingBefore(Label label) {
        OptionalInt number = number(label);
        return number.isPresent() && number.getAsInt() == last + 2 ? missing() : Optional.empty();
    }

    /** The round after the last one, if it was told so. */
    Optional<Line> missing() {
        Line.Worked told = alternate;
        if (told == null || (last + 1) % 2 != parity || told.label().isEmpty()) {
            return Optional.empty();
        }
        last++;
        Sized<Integer> number = Sized.all(last);
        Label label = new Label(told.label().get().fabric(), Optional.of(number), Optional.of(number), Optional.empty(),
                told.label().get().side());
        return Optional.of(new Line.Worked(Optional.of(label), told.instructions(), Optional.empty(), told.onlySizes()));
    }
}
