/**
 * Pages for those who teach a pattern. In: a graded pattern. Out: a {@link turnheel.exchange.document.Document} with a
 * page for each technique that the pattern uses, or with a practice sock and the stages at which to stop. All numbers
 * are read off the engine's rounds and places; nothing is counted a second time here, and nothing here knows files or
 * formats. Start reading at {@link turnheel.exchange.handout.HandOut}.
 */
package turnheel.exchange.handout;
