/**
 * The words and marks of written patterns, as tables that writer and reader share. In: a house style. Out: phrases of
 * the trade with places to fill. {@code vocabulary.properties} holds the abbreviated words; {@code
 * vocabulary-words.properties}
 * those that a style without abbreviations puts in their place, {@code vocabulary-uk.properties} and
 * {@code vocabulary-uk-words.properties} those of British usage.
 * Nothing here knows a number, a size or the order of a sentence's parts beyond its phrase.
 */
@NonNullByDefault
package turnheel.engine.wording;

import org.eclipse.jdt.annotation.NonNullByDefault;
