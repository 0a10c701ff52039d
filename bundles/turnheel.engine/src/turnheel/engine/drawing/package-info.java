/**
 * From a graded pattern to pictures. In: a graded size and its rounds, or the steps of a stitch pattern. Out: an
 * immutable {@link turnheel.engine.drawing.Picture} in millimetres whose colours are roles; canvas, SVG and PDF only
 * paint it. Start reading at {@link turnheel.engine.drawing.OutlineDrawing} and {@link
 * turnheel.engine.drawing.StitchChart}. Nothing here knows a font, a toolkit or a file, and no measurement is made up:
 * what is missing is left out and named.
 */
@NonNullByDefault
package turnheel.engine.drawing;

import org.eclipse.jdt.annotation.NonNullByDefault;
