package turnheel.engine.design;

/** A cup of short rows over half the foot, from a provisional cast-on toe-up, grafted to the instep cuff-down. */
public record ShortRowToe(TurnMethod turn) implements Toe {
}
