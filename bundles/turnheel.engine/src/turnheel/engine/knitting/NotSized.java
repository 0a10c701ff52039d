package turnheel.engine.knitting;

/** A list of values has not one for each size. */
final class NotSized extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Span span;
    private final int values;

    NotSized(Span span, int values) {
        super("%d values".formatted(values), null, false, false);
        this.span = span;
        this.values = values;
    }

    Span span() {
        return span;
    }

    int values() {
        return values;
    }
}
