package turnheel.exchange.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Opens workbooks in LibreOffice, without a screen, recalculates them and saves them again. */
final class LibreOffice {

    private static final long PATIENCE_SECONDS = 120;
    /** Without it the program believes what stands in the file; then the check would check nothing. */
    private static final String ALWAYS_RECALCULATE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema"
                xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse">\
            <value>0</value></prop></item>
            </oor:items>
            """;

    private LibreOffice() {
    }

    /**
     * Recalculates all workbooks of one folder in one run of the program.
     *
     * @return the folder that holds them under the same names
     */
    static Path recalculate(List<Path> workbooks, Path scratch) throws IOException, InterruptedException {
        Path profile = Files.createDirectories(scratch.resolve("profile/user"));
        Files.writeString(profile.resolve("registrymodifications.xcu"), ALWAYS_RECALCULATE);
        Path recalculated = Files.createDirectories(scratch.resolve("recalculated"));
        Path said = scratch.resolve("soffice.log");
        List<String> command = new ArrayList<>(List.of(program().toString(), "--headless", "--norestore",
                "-env:UserInstallation=" + profile.getParent().toUri(), "--convert-to", "xlsx:Calc MS Excel 2007 XML",
                "--outdir", recalculated.toString()));
        workbooks.forEach(workbook -> command.add(workbook.toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
            throw new AssertionError("soffice took longer than %d s; it said: %s".formatted(PATIENCE_SECONDS,
                    Files.readString(said, StandardCharsets.UTF_8)));
        }
        for (Path workbook : workbooks) {
            if (!Files.exists(recalculated.resolve(workbook.getFileName()))) {
                throw new AssertionError("soffice did not open %s; it said: %s".formatted(workbook.getFileName(),
                        Files.readString(said, StandardCharsets.UTF_8)));
            }
        }
        return recalculated;
    }

    private static Path program() {
        for (String folder : System.getenv("PATH").split(java.io.File.pathSeparator)) {
            Path program = Path.of(folder, "soffice");
            if (Files.isExecutable(program)) {
                return program;
            }
        }
        throw new AssertionError("LibreOffice is not installed, so nobody has recalculated the workbooks: there is no "
                + "\"soffice\" on the path. Run releng/verify, which installs it, or install libreoffice-calc.");
    }
}
