/** Manuscripts as text and their queries as a list. */
package turnheel.exchange.manuscript;
