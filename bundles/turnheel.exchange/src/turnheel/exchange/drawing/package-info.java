/**
 * Paints pictures into files. In: a picture of the engine. Out: SVG with words as text, or PNG with words as outlines of the
 * shipped typeface. Nothing here decides what is drawn, and no font of the machine is used.
 */
package turnheel.exchange.drawing;
