package turnheel.exchange;

/** Follows a batch. Called by one thread at a time, but not always by the same. */
public interface BatchListener {

    /**
     * A pattern was finished, well or not.
     *
     * @param finished how many are
     * @param all how many there are
     */
    void finished(BatchOutcome outcome, int finished, int all);

    /** Whether to stop after the files that are being written. May be asked by several threads at once. */
    boolean isCancelled();
}
