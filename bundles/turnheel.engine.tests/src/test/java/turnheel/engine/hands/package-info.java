/**
 * A second way to count: hands that work one round after the other, loop by loop. In: rounds as steps. Out: the loops
 * on the needle, or a {@link turnheel.engine.hands.Misknit} that says where the work went wrong. Nothing here knows a
 * rule, a count or a size; the only thing shared with the engine is what the steps are called.
 */
package turnheel.engine.hands;
