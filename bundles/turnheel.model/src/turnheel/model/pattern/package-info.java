/**
 * The classes of the editable document. Everything but this comment is generated from {@code model/pattern.ecore}, and
 * nobody edits it: behaviour lives in the engine, reading and writing in {@link turnheel.model}.
 */
package turnheel.model.pattern;
