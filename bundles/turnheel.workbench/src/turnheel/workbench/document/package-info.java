/**
 * An open pattern and what follows from it. In: a pattern file or an editor's input, and edits. Out: the editable
 * document on one EMF editing domain, and after every change one immutable {@link turnheel.workbench.document.Snapshot}
 * that all pages read. Nothing here knows a widget. Start reading at {@link
 * turnheel.workbench.document.GradedDocument}.
 */
package turnheel.workbench.document;
