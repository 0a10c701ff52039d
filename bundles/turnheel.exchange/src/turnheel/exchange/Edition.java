package turnheel.exchange;

import java.util.Optional;

import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.exchange.drawing.Drawn;

/**
 * What of a pattern is exported, and how. A format takes what concerns it; {@link ExportFormat#kind} says what does.
 *
 * @param only the only thing that is drawn; empty for all that a format holds, of a drawing the outline
 * @param size label of the only size; empty for all of them
 * @param style the house style of what is written
 */
public record Edition(Optional<Drawn.What> only, Optional<String> size, HouseStyle style) {

    /** All of it, every size, the usual house style. */
    public static Edition usual() {
        return new Edition(Optional.empty(), Optional.empty(), HouseStyles.usual());
    }

    /** The same for one size alone. */
    public Edition onlySize(String label) {
        return new Edition(only, Optional.of(label), style);
    }

    Drawn drawing() {
        return new Drawn(only.orElse(Drawn.What.OUTLINE), size);
    }
}
