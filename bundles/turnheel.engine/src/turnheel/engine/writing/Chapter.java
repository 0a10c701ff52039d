package turnheel.engine.writing;

import java.util.List;

import turnheel.engine.instruction.Line;

/**
 * What stands under one heading.
 *
 * @param heading its key in the vocabulary
 * @param notes what a knitter should know before the lines
 */
record Chapter(String heading, List<List<Piece>> notes, List<Line> lines) {

    Chapter {
        notes = List.copyOf(notes);
        lines = List.copyOf(lines);
    }

    static Chapter of(String heading, Passage passage) {
        return new Chapter(heading, List.of(), passage.lines());
    }
}
