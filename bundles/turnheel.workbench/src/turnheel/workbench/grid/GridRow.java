package turnheel.workbench.grid;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;

/** A row of the grid. */
sealed interface GridRow {

    /** The part that the row belongs to. */
    Part part();

    /** What the first column says. */
    String label();

    /** The heading over the rows of a part; it opens and closes them. */
    record Heading(Part part, boolean closed) implements GridRow {
        @Override
        public String label() {
            return PartWords.of(part);
        }
    }

    /** The values of one parameter in all sizes. */
    record Values(Parameter parameter) implements GridRow {
        @Override
        public Part part() {
            return parameter.part();
        }

        @Override
        public String label() {
            return parameter.label();
        }
    }
}
