package turnheel.engine.term;

/** The four basic operations, and the power. */
public enum Operation {
    PLUS {
        @Override
        double apply(double left, double right) {
            return left + right;
        }
    },
    MINUS {
        @Override
        double apply(double left, double right) {
            return left - right;
        }
    },
    TIMES {
        @Override
        double apply(double left, double right) {
            return left * right;
        }
    },
    DIVIDED_BY {
        @Override
        double apply(double left, double right) {
            return left / right;
        }
    },
    /** Of 0 to the 0 one program makes 1 and another an error, so that it is no number here. */
    POWER {
        @Override
        double apply(double left, double right) {
            return Double.isNaN(left) || left == 0 && right == 0 ? Double.NaN : StrictMath.pow(left, right);
        }
    };

    abstract double apply(double left, double right);
}
