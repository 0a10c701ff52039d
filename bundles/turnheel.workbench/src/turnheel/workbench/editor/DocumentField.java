package turnheel.workbench.editor;

/** One value of the document in a form. */
interface DocumentField {

    /** Whether something was typed that is not in the document yet. */
    boolean isPending();

    /**
     * Takes what was typed into the document.
     *
     * @return false when it cannot be taken; the field then keeps the text and shows why
     */
    boolean commit();

    /** Gives up what was typed. */
    void reset();

    /** Shows the document's value; what is pending stays. */
    void refresh();
}
