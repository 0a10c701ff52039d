package turnheel.engine.knitting;

/** A sentence whose shape is read, but not its meaning. */
final class Unreadable extends RuntimeException {

    private static final long serialVersionUID = 1;

    Unreadable(String why) {
        super(why, null, false, false);
    }
}
