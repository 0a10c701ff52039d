package turnheel.engine.knitting;

import java.util.Optional;

import turnheel.engine.instruction.Line;

/**
 * A line of instructions and where it is told.
 *
 * @param line what is to be done; only its stated count and sizes mean something when it is not {@code known}
 * @param known whether it was read
 * @param work where it is told what to do
 * @param stated where the count after it is stated
 */
record Told(Line line, boolean known, Span work, Optional<Span> stated) {

    Task task() {
        return known ? new Task.Work(line) : new Task.Unknown(line);
    }
}
