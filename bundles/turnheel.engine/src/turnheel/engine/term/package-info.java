/**
 * Rules as values. A rule of the trade is written once, as a {@link turnheel.engine.term.Term} over keys; the engine
 * evaluates it, <em>why</em> prints it with its values, the workbook writes it as a live formula, and what depends on a
 * number is read off it. Nothing here knows a sock: no key is named in this package.
 */
@NonNullByDefault
package turnheel.engine.term;

import org.eclipse.jdt.annotation.NonNullByDefault;
