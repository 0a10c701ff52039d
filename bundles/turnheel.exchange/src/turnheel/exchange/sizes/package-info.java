/**
 * Tables of sizes to start a pattern from. In: tables of comma-separated values, the built-in ones as resources of
 * this package. Out: {@link turnheel.exchange.sizes.SizeTable}s of the engine's sizes, each with its source. Nothing
 * here estimates a measurement that a table does not have.
 *
 * <p>Children's sizes are not built in: the open survey has the lengths of children's feet but no girths, and
 * without the circumference of the foot no stitch can be counted.
 */
package turnheel.exchange.sizes;
