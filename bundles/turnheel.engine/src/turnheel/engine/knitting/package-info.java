/**
 * Knits written patterns. In: a text, or the lines that another room made. Out: the loops after every round in every size,
 * and queries with their place. It keeps a needle and does what it is told, as a knitter would: no formula of any part may
 * be known here, or the second count would prove nothing. What it cannot read it says; it never guesses. Start reading at
 * {@link turnheel.engine.knitting.Manuscript}.
 */
@NonNullByDefault
package turnheel.engine.knitting;

import org.eclipse.jdt.annotation.NonNullByDefault;
