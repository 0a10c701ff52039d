/**
 * What can stand in a cell, whichever file the table goes into. In: a number, a text or a formula. Out: the same as a
 * value, with what a person typed kept apart from what a program may run. Nothing here knows a file format.
 */
package turnheel.exchange.table;
