/**
 * What can stand in a cell, whichever file the table goes into or comes from. In: a number, a text or a formula, or
 * separated values. Out: the same as a value, with what a person typed kept apart from what a program may run. Nothing
 * here knows what a table means, nor workbooks.
 */
package turnheel.exchange.table;
