/**
 * What a person changed in an exported workbook, as plain values. In: what the reader in {@code workbook} found by
 * comparing the workbook with the pattern that it was made from. Out: {@link turnheel.exchange.edits.Edits}, a list of
 * changes that could be made to the pattern and a list of problems; whoever applies them applies all or none. Nothing
 * here knows cells, documents or commands.
 */
package turnheel.exchange.edits;
