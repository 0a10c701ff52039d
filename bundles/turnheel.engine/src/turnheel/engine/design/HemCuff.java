package turnheel.engine.design;

/** A folded hem: knitted twice its height with a purl round at the fold, then joined to itself stitch by stitch. */
public record HemCuff() implements Cuff {

    @Override
    public int repeat() {
        return 1;
    }

    @Override
    public boolean mayAdjust() {
        return false;
    }
}
