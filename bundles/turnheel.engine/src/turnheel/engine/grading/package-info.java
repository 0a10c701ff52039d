/**
 * From a design to counts and lengths for every size. In: an immutable {@link turnheel.engine.design.Design}. Out: one
 * {@link turnheel.engine.grading.Graded}, each number with its source and reason. Start reading at
 * {@link turnheel.engine.grading.Grader}; the rules themselves are in {@code …Rules}, one file per kind of part, and the
 * one thing that no rule can say – which count – is {@link turnheel.engine.grading.CountSolver}'s. Nothing here lists
 * rounds, writes words for knitters or knows a screen.
 */
@NonNullByDefault
package turnheel.engine.grading;

import org.eclipse.jdt.annotation.NonNullByDefault;
