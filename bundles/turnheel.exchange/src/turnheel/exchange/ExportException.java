package turnheel.exchange;

/**
 * A file was not exported. The message is for a person: what, where, what to do. Nothing was left behind or
 * overwritten.
 */
public final class ExportException extends Exception {

    private static final long serialVersionUID = 1;

    ExportException(String message) {
        super(message);
    }

    ExportException(String message, Throwable cause) {
        super(message, cause);
    }
}
