/** In: a graded design. Out: queries. Nothing here changes a number. */
@NonNullByDefault
package turnheel.engine.checks;

import org.eclipse.jdt.annotation.NonNullByDefault;
