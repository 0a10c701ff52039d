package turnheel.engine.shaping;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.GradedSize;

/** Reads a graded size's numbers as the whole counts that hands need. */
final class Whole {

    private static final double TOLERANCE = 1e-6;

    private final GradedSize size;

    Whole(GradedSize size) {
        this.size = size;
    }

    /**
     * The count of a parameter.
     *
     * @throws NotKnittable when it is absent, below zero or not whole; the checks report such numbers
     */
    int count(Parameter parameter) {
        double value = size.cell(parameter).orElseThrow(NotKnittable::new).value();
        double nearest = Math.rint(value);
        if (Math.abs(value - nearest) > TOLERANCE || nearest < 0) {
            throw new NotKnittable();
        }
        return (int) nearest;
    }

    /**
     * One equal share of a count.
     *
     * @throws NotKnittable when it does not divide
     */
    static int share(int count, int parts) {
        if (count % parts != 0) {
            throw new NotKnittable();
        }
        return count / parts;
    }

    /** A number that cannot be knitted. Never leaves this package: the part is shown without rounds, a query says why. */
    static final class NotKnittable extends RuntimeException {
        private static final long serialVersionUID = 1;

        NotKnittable() {
            super(null, null, false, false);
        }
    }
}
