/**
 * What hands do: stitches, by what they take from the needle and leave on it, and the steps that rounds are made of.
 * {@code shaping} makes steps from counts, {@code writing} puts them into words; who reads written patterns makes them
 * from words. Nothing here knows a rule or a size.
 */
@NonNullByDefault
package turnheel.engine.stitch;

import org.eclipse.jdt.annotation.NonNullByDefault;
