/**
 * Two versions of a pattern side by side. In: two graded patterns and the house style that both are printed in. Out: what the
 * designer changed, and every printed number and passage that reads otherwise since. Nothing here grades, writes words of its
 * own or knows a screen. Start reading at {@link turnheel.engine.comparing.Comparison}.
 */
@NonNullByDefault
package turnheel.engine.comparing;

import org.eclipse.jdt.annotation.NonNullByDefault;
