/**
 * The document as a file and as a design. In: a pattern file, or a design to start from. Out: the editable
 * {@link turnheel.model.pattern.Pattern} and, through the one {@link turnheel.model.Door}, an immutable
 * {@link turnheel.engine.design.Design}; past the door nobody sees an {@code EObject}. Nothing here grades, shapes or
 * knows a screen. Start reading at {@link turnheel.model.PatternFiles}.
 */
package turnheel.model;
