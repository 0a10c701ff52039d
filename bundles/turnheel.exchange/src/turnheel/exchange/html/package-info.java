/**
 * Documents as pages for a browser. In: a {@link turnheel.exchange.document.Document}. Out: one file that is HTML and
 * well-formed XML at once, holds its style and its pictures, and asks for nothing from anywhere. No script, no word of a
 * person as markup or style. Start reading at {@link turnheel.exchange.html.HtmlPage}.
 */
package turnheel.exchange.html;
