package turnheel.engine.design;

import java.util.Locale;

/** Where a number belongs; the order is that of every table. */
public enum Part {
    GAUGE, BODY, FIT, TOE, FOOT, HEEL, LEG, CUFF, YARN,
    /** Rows of the designer. */
    OWN;

    /** The word before the dot of the part's keys. */
    public String prefix() {
        return name().toLowerCase(Locale.ROOT);
    }
}
