package turnheel.exchange;

import java.io.IOException;
import java.nio.file.Path;

import turnheel.engine.grading.Graded;

/** Reads pattern files, whose format is not known here. May be called by several threads at once. */
@FunctionalInterface
public interface PatternSource {

    /**
     * The pattern in a file, graded and complete as far as it is exported.
     *
     * @throws IOException when there is none; the message is for a person and says what, where and what to do
     */
    Graded read(Path file) throws IOException;
}
