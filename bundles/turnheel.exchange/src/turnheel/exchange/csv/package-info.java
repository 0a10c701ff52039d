/**
 * The grading table as comma-separated values (RFC 4180, UTF-8). In: a {@link turnheel.engine.grading.Graded}. Out:
 * a stream of text. Nothing here knows a file.
 */
package turnheel.exchange.csv;
