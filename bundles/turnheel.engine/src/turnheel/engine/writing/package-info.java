/**
 * From counts to written patterns. In: a graded pattern and a house style. Out: paragraphs of words and sized values. Every
 * number of a line is read off the graded sizes; every word comes from the vocabulary. Nothing here grades a count or
 * knits: that the lines give the rounds of {@code shaping} is for the tests, and for who knits the text again, to say.
 * Start reading at {@link turnheel.engine.writing.Manuscripts}; {@link turnheel.engine.writing.CuffWriting} is the smallest
 * part.
 */
@NonNullByDefault
package turnheel.engine.writing;

import org.eclipse.jdt.annotation.NonNullByDefault;
