/**
 * Manuscripts of others. In: the bytes of a text, Markdown, word-processor or PDF file. Out: its text, line by line, and
 * the list of queries that goes with it from version to version. Nothing here reads an instruction.
 */
package turnheel.exchange.manuscript;
