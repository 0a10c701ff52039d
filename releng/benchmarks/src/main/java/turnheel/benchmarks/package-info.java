/** What an edit, an export or a check costs. In: patterns made up for it. Out: times, compared within one run. */
@NonNullByDefault
package turnheel.benchmarks;

import org.eclipse.jdt.annotation.NonNullByDefault;
