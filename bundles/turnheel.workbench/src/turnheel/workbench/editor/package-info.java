/**
 * The pattern editor: its pages, its undo, and its dealings with the file. In: a pattern file and edits. Out: commands
 * on the {@link turnheel.workbench.document.GradedDocument}, the saved file, and problem markers through {@link
 * turnheel.workbench.markers}. Pages show the document's snapshot and compute nothing. Start reading at {@link
 * turnheel.workbench.editor.PatternEditor}.
 */
package turnheel.workbench.editor;
