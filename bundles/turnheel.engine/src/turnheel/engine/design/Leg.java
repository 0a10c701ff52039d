package turnheel.engine.design;

/** A kind of leg with the designer's choices for it. */
public sealed interface Leg permits StraightLeg {

    /** How high the leg reaches where a size does not say. */
    SockLength length();
}
