/**
 * The grading grid: parameters by sizes. In: the snapshots of a {@link turnheel.workbench.document.GradedDocument}.
 * Out: a painted table, and edits of that document. Which rows there are and what a cell says is decided by {@code
 * GridContent} and {@code CellText}, which know no widget; how it looks by {@code GridTheme}; what keys and clicks do
 * by {@code GridBindings}. Nothing is computed here that the engine computes. Start reading at {@link
 * turnheel.workbench.grid.GradingGrid}.
 */
package turnheel.workbench.grid;
