package turnheel.engine.design;

/** A kind of cuff with the designer's choices for it. */
public sealed interface Cuff permits RibCuff {
}
