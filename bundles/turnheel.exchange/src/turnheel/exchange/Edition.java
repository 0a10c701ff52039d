package turnheel.exchange;

import java.util.Optional;

import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.exchange.drawing.Drawn;

/**
 * What of a pattern is exported, and how. A format takes what concerns it; {@link ExportFormat#kind} says what does.
 *
 * @param drawn the only thing that a drawing shows
 * @param size label of the only size; empty for all of them
 * @param style the house style of what is written
 */
public record Edition(Drawn.What drawn, Optional<String> size, HouseStyle style) {

    /** The outline, every size, the usual house style. */
    public static Edition usual() {
        return new Edition(Drawn.What.OUTLINE, Optional.empty(), HouseStyles.usual());
    }

    /** The same for one size alone. */
    public Edition onlySize(String label) {
        return new Edition(drawn, Optional.of(label), style);
    }

    Drawn drawing() {
        return new Drawn(drawn, size);
    }
}
