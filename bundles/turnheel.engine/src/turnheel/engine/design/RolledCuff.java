package turnheel.engine.design;

/** A plain edge that rolls by itself. */
public record RolledCuff() implements Cuff {

    @Override
    public int repeat() {
        return 1;
    }

    @Override
    public boolean mayAdjust() {
        return false;
    }
}
