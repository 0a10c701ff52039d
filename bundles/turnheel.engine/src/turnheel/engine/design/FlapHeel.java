package turnheel.engine.design;

/**
 * A flap up the back of the heel and a gusset beside it. Cuff-down the flap comes first, then the turn, then the gusset
 * narrows; toe-up the gusset widens first, then the turn, then the flap takes the gusset in.
 *
 * @param turn how the heel is turned cuff-down; toe-up it is always a short-row turn
 * @param length how long the flap is where a size does not say
 * @param fabric the stitch pattern of the flap
 * @param edge the sides of the flap cuff-down; toe-up they join the gusset
 * @param pickUp how many stitches the gusset starts with cuff-down; toe-up nothing is picked up
 */
public record FlapHeel(HeelTurn turn, FlapLength length, FlapFabric fabric, FlapEdge edge, PickUp pickUp)
        implements Heel {

    /** A plain flap with a chain at its sides, of which every loop is picked up. */
    public FlapHeel(HeelTurn turn, FlapLength length) {
        this(turn, length, FlapFabric.PLAIN, FlapEdge.SLIPPED, new PickUp.HalfTheRows());
    }
}
