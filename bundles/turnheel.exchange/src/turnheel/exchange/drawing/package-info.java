/** Paints pictures into files. In: a picture of the engine. Out: SVG. Nothing here decides what is drawn. */
package turnheel.exchange.drawing;
