/** In: counts. Out: the stitches after every round. Nothing here measures or writes words. */
@NonNullByDefault
package turnheel.engine.shaping;

import org.eclipse.jdt.annotation.NonNullByDefault;
