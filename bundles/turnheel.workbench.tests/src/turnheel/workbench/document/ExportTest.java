package turnheel.workbench.document;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.ExportFormat;
import turnheel.exchange.Exports;
import turnheel.exchange.ManuscriptFiles;

/** Inside the platform every library must be found by the bundle that asks for it. */
class ExportTest {

    private static final Graded GRADED = Patterns.grade(turnheel.workbench.fixture.Patterns.toeUp());

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void writesEveryFormat(ExportFormat format) throws Exception {
        Path file = folder.resolve("harbour-light" + format.ending());
        Exports.write(GRADED, file, false);
        assertTrue(Files.size(file) > 0);
    }

    @Test
    void readsThePagesAgain() throws Exception {
        Path file = folder.resolve("harbour-light.pdf");
        Exports.write(GRADED, file, false);
        String text = ManuscriptFiles.read(file);
        assertTrue(text.startsWith("Harbour Light\nSizes: XS (S, M, L, XL)\n"), text);
    }
}
