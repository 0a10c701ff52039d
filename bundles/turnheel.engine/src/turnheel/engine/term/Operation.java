package turnheel.engine.term;

/** The four basic operations. */
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
    };

    abstract double apply(double left, double right);
}
