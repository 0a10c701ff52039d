/** In: rounds. Out: instructions. Nothing here counts stitches. */
@NonNullByDefault
package turnheel.engine.writing;

import org.eclipse.jdt.annotation.NonNullByDefault;
