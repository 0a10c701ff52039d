package turnheel.engine.design;

/** A kind of toe with the designer's choices for it. Its rules are in {@code grading}, its rounds in {@code shaping}. */
public sealed interface Toe permits RoundToe, WedgeToe, StarToe, ShortRowToe, AsymmetricToe {
}
