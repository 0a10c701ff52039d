/**
 * A designer's own formula. In: a text in the open spreadsheet notation over the keys of other rows, such as
 * {@code =ROUND(foot.stitches/4;0)*2}. Out: the {@link turnheel.engine.term.Term} that gives what a spreadsheet program
 * gives, or the reason why there is none. Whether the keys exist and go round in circles is asked in {@code grading};
 * nothing is evaluated here that depends on a key. Start reading at {@link turnheel.engine.formula.OwnFormula}.
 */
@NonNullByDefault
package turnheel.engine.formula;

import org.eclipse.jdt.annotation.NonNullByDefault;
