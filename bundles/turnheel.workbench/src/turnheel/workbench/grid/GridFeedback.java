package turnheel.workbench.grid;

/** Where the grid says what it could not do, and why. */
public interface GridFeedback {

    /** A text in a cell began or ended to differ from the document. */
    void typing();

    /** The text or key was not taken for this reason. */
    void refused(String reason);

    /** A text that could not be taken was given up; the reason was shown by {@link #refused} before. */
    void givenUp(String text);

    /** What was shown is done with. */
    void clear();
}
