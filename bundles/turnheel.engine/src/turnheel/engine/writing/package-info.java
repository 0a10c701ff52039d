/**
 * From rounds to words. In: rounds as steps. Out: text in the trade's usual English; every abbreviation comes from the
 * vocabulary table, {@code vocabulary.properties}. Nothing here counts or decides.
 */
@NonNullByDefault
package turnheel.engine.writing;

import org.eclipse.jdt.annotation.NonNullByDefault;
