/**
 * What every export says about a pattern beside its numbers, as a book's imprint does: its parts in words, the
 * cautions that travel with it, and the hash that tells one state of the design from another. In: a design or a
 * graded pattern. Out: sentences and one hash. Nothing here knows a file format.
 */
package turnheel.exchange.imprint;
