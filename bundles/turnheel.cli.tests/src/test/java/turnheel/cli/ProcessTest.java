package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as it is started: a process of its own, without a display, in a locale of plain letters. */
class ProcessTest {

    @TempDir
    private Path folder;

    private Run start(List<String> jvmOptions, Object... arguments) throws IOException, InterruptedException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        List<String> command = new ArrayList<>(List.of(java.toString(), "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path")));
        command.addAll(jvmOptions);
        command.add(Main.class.getName());
        Arrays.stream(arguments).map(Object::toString).forEach(command::add);
        Path out = folder.resolve("stdout");
        Path err = folder.resolve("stderr");
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("LC_ALL", "C");
        builder.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY", "JAVA_TOOL_OPTIONS"));
        int exitCode = builder.start().waitFor();
        return new Run(exitCode, Files.readString(out), Files.readString(err));
    }

    @Test
    void writesUtf8AndEndsWithItsExitCode() throws IOException, InterruptedException {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "title=Skär – 靴下").clean();
        assertEquals("Skär – 靴下", start(List.of(), "grade", file).clean().lines().getFirst());
        Run.of("set", file, "foot.stitches[M]=66");
        assertEquals(1, start(List.of(), "check", file).exitCode());
        start(List.of(), "grade", folder.resolve("none.turnheel")).refused("none.turnheel");
    }

    @Test
    void saysTheSameInEveryCountry() throws IOException, InterruptedException {
        Path file = Patterns.toeUp(folder);
        List<String> otherDigits = List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.extensions=u-nu-arab");
        Run set = start(otherDigits, "set", file, "cuff=rib-3x1", "body.footLength[M]=9 1/2in").clean();
        assertEquals(List.of("cuff", "pattern", "rib-2x2", "rib-3x1"), set.row("cuff"));
        assertEquals(Run.of("grade", file).out(), start(otherDigits, "grade", file).clean().out());
        assertEquals(Run.of("rounds", file, "--size", "M").out(),
                start(otherDigits, "rounds", file, "--size", "M").clean().out());
    }

    @Test
    void loadsNoWindowSystemAndTheWorkbookOnlyForAWorkbook() throws IOException, InterruptedException {
        Path file = Patterns.toeUp(folder);
        List<String> logClasses = List.of("-Xlog:class+load:file=" + folder.resolve("classes"));
        start(logClasses, "grade", file).clean();
        String forGrading = Files.readString(folder.resolve("classes"));
        assertTrue(forGrading.contains("turnheel.cli.GradeVerb "), "classes are logged");
        assertFalse(forGrading.contains("org.apache.poi."), "a table needs no workbook");
        assertFalse(forGrading.contains(" java.awt."), "a table needs no picture");

        Path target = folder.resolve("gull.xlsx");
        start(logClasses, "export", file, "--to", target).clean();
        String forExport = Files.readString(folder.resolve("classes"));
        assertTrue(forExport.contains("org.apache.poi."), "a workbook is written");
        assertFalse(forExport.contains("sun.awt.X11.XToolkit "), "no display is asked for");
        assertTrue(forExport.contains("java.awt.HeadlessGraphicsEnvironment ")
                || forExport.contains("sun.java2d.HeadlessGraphicsEnvironment "), "pictures are painted in memory");
        assertTrue(Files.size(target) > 0);
    }
}
