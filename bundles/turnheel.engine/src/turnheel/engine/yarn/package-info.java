/**
 * How much yarn a pattern takes. In: a graded pattern and its rounds. Out: the pattern with its yarn rows. The loops
 * are counted here; what follows from them are rules of {@code grading}, like all others. Nothing here prices, stores
 * or chooses a yarn. Start reading at {@link turnheel.engine.yarn.Patterns}, the one call from a design to all its
 * numbers.
 */
@NonNullByDefault
package turnheel.engine.yarn;

import org.eclipse.jdt.annotation.NonNullByDefault;
