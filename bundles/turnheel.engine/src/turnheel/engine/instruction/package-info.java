/**
 * What a written pattern tells a knitter to do, as values: where the words of a writer and the words that a reader found
 * meet. In: nothing but the stitches of the trade. Out: lines of instructions with a value for each size. Nothing here
 * knows a word of any language, a formula or a needle.
 */
@NonNullByDefault
package turnheel.engine.instruction;

import org.eclipse.jdt.annotation.NonNullByDefault;
