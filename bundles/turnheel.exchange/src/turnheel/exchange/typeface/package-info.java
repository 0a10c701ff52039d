/**
 * The typeface that ships with the product, so that a file looks and weighs the same on every machine. In: nothing.
 * Out: font files as they came from their makers, unchanged, with their licence beside them. No font of the machine is
 * asked for here.
 */
package turnheel.exchange.typeface;
