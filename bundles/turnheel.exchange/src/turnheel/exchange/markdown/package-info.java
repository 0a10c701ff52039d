/**
 * Documents as Markdown: CommonMark, with the tables of its common dialect. In: a {@link
 * turnheel.exchange.document.Document}. Out: one text, the same for the same document; a picture is told in words. Whatever a
 * person typed is escaped and never becomes markup. Nothing here knows socks.
 */
package turnheel.exchange.markdown;
