/**
 * From counts to rounds. In: a graded size. Out: every round of every part, as steps, with the stitches after it. Nothing
 * here measures, rounds a number or writes words; lengths were turned into counts in {@code grading}. Start reading at
 * {@link turnheel.engine.shaping.Rounds}; {@link turnheel.engine.shaping.RoundTaperShaping} is the smallest complete part.
 */
@NonNullByDefault
package turnheel.engine.shaping;

import org.eclipse.jdt.annotation.NonNullByDefault;
