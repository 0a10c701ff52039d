/**
 * The pattern as a workbook (.xlsx, ECMA-376). In: a {@link turnheel.engine.grading.Graded}. Out: a stream of bytes,
 * the same for the same design. One class per sheet decides what stands where; one {@link CellWriter} turns content
 * into cells; {@link Styles} knows how they look. Start reading at {@link PatternWorkbook}, then {@link
 * CountsSheet}.
 *
 * <p>Derived numbers are live formulas over defined names: {@code foot_stitches_size2} is the number {@code
 * foot.stitches} of the second size ({@link CellNames}). The formula comes from the engine's own rule; no rule is
 * written here.
 *
 * <p>The way back starts at {@link WorkbookReader}: it compares a workbook that a person has edited with the pattern that it
 * was made from and tells what changed as {@link turnheel.exchange.edits.Edits}.
 */
package turnheel.exchange.workbook;
