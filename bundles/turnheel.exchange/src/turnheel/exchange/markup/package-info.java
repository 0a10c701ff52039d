/** Text among markup. In: what a person typed. Out: the same, escaped. No markup of any format is made here. */
package turnheel.exchange.markup;
