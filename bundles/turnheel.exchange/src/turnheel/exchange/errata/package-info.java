/**
 * Errata sheets for the publisher and the designer's list of what was changed. In: a {@link
 * turnheel.engine.comparing.Comparison}. Out: a {@link turnheel.exchange.document.Document}, or records of a table. Nothing here
 * compares, and no file format but that of the records is known.
 */
package turnheel.exchange.errata;
