package turnheel.engine.drawing;

import turnheel.engine.stitch.Stitch;

/** One square of a chart. */
public sealed interface Square {

    /** A stitch is worked here. */
    record Worked(Stitch stitch) implements Square {
    }

    /** A stitch lies here but this row does not reach it. */
    record Waiting() implements Square {
    }

    /** There is no stitch here in this row; the square only keeps the others in their columns. */
    record NoStitch() implements Square {
    }

    /** Nothing is worked here: the row turns, at the edge between the squares beside. Takes no width. */
    record TurnEdge() implements Square {
    }
}
