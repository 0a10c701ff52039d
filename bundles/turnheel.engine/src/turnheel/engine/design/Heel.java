package turnheel.engine.design;

/** A kind of heel with the designer's choices for it. */
public sealed interface Heel permits ShortRowHeel, FlapHeel, AfterthoughtHeel {
}
