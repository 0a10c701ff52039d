package turnheel.engine.design;

/** A cup of short rows that get shorter to the centre and longer again. */
public record ShortRowHeel(TurnMethod turn) implements Heel {
}
