/**
 * Documents as word-processor files (.docx, ECMA-376) for a layouter. In: a {@link turnheel.exchange.document.Document}.
 * Out: a stream of bytes, the same for the same document. What a paragraph is for is the name of its style, so that a
 * layout program can map it; looks stand in {@code styles.xml} alone. Nothing here knows socks, nor reads manuscripts, which
 * is {@code manuscript}'s. Start reading at {@link turnheel.exchange.word.DocxWriter}.
 */
package turnheel.exchange.word;
