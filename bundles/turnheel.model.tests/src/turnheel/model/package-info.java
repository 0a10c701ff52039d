/**
 * Tests of the document: its file, its door and its edits. Start reading at {@link turnheel.model.Patterns}, the shared
 * documents.
 */
package turnheel.model;
