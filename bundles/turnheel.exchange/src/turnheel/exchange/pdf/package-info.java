/**
 * Documents as pages. In: a {@link turnheel.exchange.document.Document}. Out: a tagged PDF file (PDF/UA-1 and PDF/A-2a)
 * with its fonts inside, the same bytes on every machine. Nothing is fetched, no font of the machine is asked for, and
 * no markup is parsed: what a person typed goes into a tree as text. Start reading at
 * {@link turnheel.exchange.pdf.PdfWriter}.
 */
package turnheel.exchange.pdf;
