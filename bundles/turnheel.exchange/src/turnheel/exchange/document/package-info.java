/**
 * Documents to be read on paper or screen, before anybody knows which. In: a graded pattern, or whatever else has a story
 * to tell. Out: a {@link turnheel.exchange.document.Document}, a list of blocks of a few kinds, which the writers of each
 * format render without knowing what they are about. Words here are final; nothing here knows markup, pages or files.
 */
package turnheel.exchange.document;
