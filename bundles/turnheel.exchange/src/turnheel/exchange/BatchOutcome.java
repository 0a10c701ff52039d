package turnheel.exchange;

import java.nio.file.Path;
import java.util.List;

/**
 * What came of one pattern of a batch.
 *
 * @param source the pattern file, or a folder that could not be looked into, from the batch's folder on
 * @param errors queries of error level
 * @param warnings queries of warning level
 * @param message why it failed, else what the first query says; empty when there is nothing to say
 * @param written the files that are there now, from the target folder on
 */
public record BatchOutcome(Path source, State state, int errors, int warnings, String message, List<Path> written) {

    /** How far a pattern came. */
    public enum State {
        /** Every file was written. */
        DONE,
        /** Not every file was written; the message says why. */
        FAILED,
        /** The batch was cancelled before it; what it had written until then is whole. */
        CANCELLED
    }

    public BatchOutcome {
        written = List.copyOf(written);
    }

    static BatchOutcome failed(Path source, String message, List<Path> written) {
        return new BatchOutcome(source, State.FAILED, 0, 0, message, written);
    }
}
