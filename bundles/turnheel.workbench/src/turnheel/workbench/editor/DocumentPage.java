package turnheel.workbench.editor;

/** A page that shows the document. */
interface DocumentPage {

    /** The document, its snapshot, or whether it is saved, changed. */
    void documentChanged();

    /** Whether something was typed on this page that is not in the document yet. */
    default boolean hasPending() {
        return false;
    }

    /** Takes over what was typed, as far as it can be. */
    default void commitPending() {
        // Most pages edit the document at once.
    }

    /** Gives up what was typed. */
    default void resetPending() {
        // Most pages edit the document at once.
    }
}
