/**
 * Tables of sizes to start a pattern from, and shoe sizes. In: tables of separated values or workbooks, the built-in
 * ones as resources of this package. Out: {@link turnheel.exchange.sizes.SizeTable}s of the engine's sizes, each with
 * its source, and what was wrong with a table as {@link turnheel.exchange.sizes.SizeTableProblem}s. Nothing here
 * estimates a measurement that a table does not have: grading predicts it and marks it so.
 *
 * <p>Tables of finished socks give every size an ease of nothing, so that the ease that is in them already is not taken
 * twice. Standard body sizes of the trade are not built in: nobody could read them at their source.
 */
package turnheel.exchange.sizes;
