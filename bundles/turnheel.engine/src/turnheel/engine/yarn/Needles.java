package turnheel.engine.yarn;

import java.util.Optional;
import java.util.ResourceBundle;

import turnheel.engine.design.Length;

/** Needle sizes; the table with its source is {@code needles.properties}. */
public final class Needles {

    private static final ResourceBundle TABLE = ResourceBundle.getBundle("turnheel.engine.yarn.needles");
    private static final double TOLERANCE_MM = 1e-6;

    private Needles() {
    }

    /** The US number of a needle; empty where makers do not agree on one, as for 2.5 and 3 mm. */
    public static Optional<String> usNumber(Length diameter) {
        return TABLE.keySet().stream().filter(mm -> Math.abs(Double.parseDouble(mm) - diameter.mm()) < TOLERANCE_MM)
                .findFirst().map(TABLE::getString);
    }
}
