/**
 * What a technical editor would ask of the numbers. In: a graded pattern. Out: queries, grading's own and those found here,
 * in the order of the rows. Nothing here corrects or clamps a number.
 */
@NonNullByDefault
package turnheel.engine.checks;

import org.eclipse.jdt.annotation.NonNullByDefault;
