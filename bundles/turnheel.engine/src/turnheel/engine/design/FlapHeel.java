package turnheel.engine.design;

/**
 * A flap up the back of the heel and a gusset beside it. Cuff-down the flap comes first, then the turn, then the gusset
 * narrows; toe-up the gusset widens first, then the turn, then the flap takes the gusset in.
 *
 * @param turn how the heel is turned cuff-down; toe-up it is always a short-row turn
 * @param length how long the flap is where a size does not say
 */
public record FlapHeel(HeelTurn turn, FlapLength length) implements Heel {
}
