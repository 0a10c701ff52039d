package turnheel.engine.hands;

/** The work cannot go on as written. */
public final class Misknit extends AssertionError {

    private static final long serialVersionUID = 1;

    Misknit(String message, Object... values) {
        super(message.formatted(values));
    }
}
