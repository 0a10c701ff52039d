/**
 * What office files have in common, whatever they hold: texts that XML can carry, and archives that do not depend on when
 * they were packed. In: a text or the bytes of a zip file. Out: the same without what differs from run to run. Nothing here
 * knows what a document is about.
 */
package turnheel.exchange.office;
