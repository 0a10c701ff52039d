package turnheel.engine.shaping;

import java.util.Locale;

/** What a round is for. */
public enum RoundKind {
    CAST_ON,
    /** First works the stitches of a cast-on: all of them, or the half that it left unworked, which ends the round. */
    SET_UP, PLAIN, INCREASE, DECREASE,
    /** A flat short row. */
    ROW, TURN, PICK_UP, RIB, BIND_OFF,
    /** The last stitches of a toe are grafted or drawn closed. */
    GRAFT;

    /** The word that files, tables and scripts use; not translated. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
