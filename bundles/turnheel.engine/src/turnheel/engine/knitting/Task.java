package turnheel.engine.knitting;

import turnheel.engine.instruction.Line;

/** One thing to do, or not to be done because it could not be read. */
sealed interface Task {

    /** A line that can be worked. */
    record Work(Line line) implements Task {
    }

    /** Something was told here that nobody could read, or whose values do not say what to do. */
    record Unknown(Line line) implements Task {
    }

    /** The line; of an unknown one only its stated count and its sizes mean something. */
    Line line();
}
