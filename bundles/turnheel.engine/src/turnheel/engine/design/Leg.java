package turnheel.engine.design;

/** A kind of leg with the designer's choices for it. */
public sealed interface Leg permits StraightLeg, CalfLeg {

    /** How high the leg reaches where a size does not say. */
    SockLength length();

    /** Where its stitches above the heel come from. */
    LegCount count();
}
