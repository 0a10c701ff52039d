/**
 * The views beside the editor. In: the snapshot and the selected cell of the pattern that is edited. Out: the same in
 * another light – why, drawn, charted, round by round. A view computes nothing and keeps nothing; what it changes is an
 * edit of the document, undone in the editor. Start reading at {@link turnheel.workbench.view.PatternView}.
 */
package turnheel.workbench.view;
