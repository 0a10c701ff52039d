/**
 * The way out: graded patterns as files. In: a {@link turnheel.engine.grading.Graded} and where it should go. Out:
 * one whole file, or a message that says why there is none. Nothing here computes what the engine knows, and no file
 * name is known below this package: the writers in {@code workbook} and {@code csv} see a stream. Start reading at
 * {@link turnheel.exchange.Exports}.
 */
package turnheel.exchange;
