package turnheel.install;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a stranger sees who installs the feature from the update site into a platform that never heard of it. */
class InstalledFeatureTest {

    private static final Path INSTALLED = Path.of(System.getProperty("turnheel.installed"));
    private static final Path PLATFORM = Path.of(System.getProperty("turnheel.platform"));
    private static final Path EXAMPLES = Path.of(System.getProperty("turnheel.examples"));
    private static final Path OUTPUT = Path.of(System.getProperty("turnheel.output"));
    private static final int START_AND_LOOK_SECONDS = 120;

    @TempDir
    private Path scratch;

    @Test
    void bringsTheWorkbenchAndNoStartLevel() throws IOException {
        List<Bundle> before = bundles(PLATFORM);
        List<Bundle> after = bundles(INSTALLED);

        assertFalse(names(before).anyMatch(name -> name.startsWith("turnheel.")), "the platform is not plain");
        assertTrue(names(after).toList().containsAll(List.of("turnheel.engine", "turnheel.model", "turnheel.exchange",
                "turnheel.workbench", "turnheel.collections")), () -> "installed: " + names(after).toList());
        List<Bundle> started = after.stream().filter(bundle -> !before.contains(bundle))
                .filter(Bundle::hasStartLevelOfItsOwn).toList();
        assertEquals(List.of(), started, "the feature must not set start levels in somebody's platform");
        assertFalse(names(after).anyMatch("turnheel.logging"::equals), "the feature must not change somebody's logging");
    }

    @Test
    void paintsTheGridOfAnExamplePattern() throws Exception {
        Path picture = OUTPUT.resolve("grid.png");
        Files.deleteIfExists(picture);
        Path workspace = scratch.resolve("workspace");

        int exit = start(workspace, picture, anExample());

        Path trouble = Path.of(picture + ".txt");
        if (Files.exists(trouble)) {
            fail(Files.readString(trouble) + errorsIn(workspace));
        }
        assertEquals(0, exit, () -> "exit code; the output is in " + OUTPUT.resolve("workbench.txt"));
        assertEquals("", errorsIn(workspace));
        int written = Picture.of(picture).fieldsWithWriting(4, 8, 800, 240);
        assertTrue(written >= 20, () -> written + " of 32 fields hold writing; look at " + picture);
    }

    private static Path anExample() throws IOException {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".turnheel")).sorted().findFirst()
                    .orElseThrow(() -> new IOException("no example pattern below " + EXAMPLES));
        }
    }

    private int start(Path workspace, Path picture, Path pattern) throws IOException, InterruptedException {
        Path configuration = configurationWithProbe();
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dturnheel.probe.pattern=" + pattern, "-Dturnheel.probe.picture=" + picture,
                "-jar", launcher().toString(), "-consoleLog", "-nosplash",
                "-configuration", configuration.toString(), "-data", workspace.toString()));
        Process workbench = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(OUTPUT.resolve("workbench.txt").toFile()).start();
        if (!workbench.waitFor(START_AND_LOOK_SECONDS, TimeUnit.SECONDS)) {
            workbench.destroyForcibly().waitFor();
            fail("the workbench did not close by itself\n" + errorsIn(workspace));
        }
        return workbench.exitValue();
    }

    /** A copy of the configuration with the probe among its bundles; the installation itself stays as it is. */
    private Path configurationWithProbe() throws IOException {
        Path configuration = scratch.resolve("configuration");
        Path list = configuration.resolve("org.eclipse.equinox.simpleconfigurator/bundles.info");
        Files.createDirectories(list.getParent());
        Files.copy(INSTALLED.resolve("configuration/config.ini"), configuration.resolve("config.ini"));
        List<String> lines = new ArrayList<>();
        for (Bundle bundle : bundles(INSTALLED)) {
            lines.add(bundle.at(INSTALLED.resolve(bundle.location())));
        }
        lines.add(new Bundle("turnheel.install.probe", versionOf(probe()), "", 4, false).at(probe()));
        Files.write(list, lines);
        return configuration;
    }

    /** The probe's jar, on this test's class path for that alone. */
    private static Path probe() throws IOException {
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            if (entry.contains("turnheel.install.probe")) {
                return Path.of(entry);
            }
        }
        throw new IOException("the probe is not on the class path");
    }

    /** A bundle that is listed with another version than its own is left out without a word. */
    private static String versionOf(Path bundle) throws IOException {
        try (JarFile jar = new JarFile(bundle.toFile())) {
            return jar.getManifest().getMainAttributes().getValue("Bundle-Version");
        }
    }

    private static Path launcher() throws IOException {
        try (Stream<Path> plugins = Files.list(INSTALLED.resolve("plugins"))) {
            return plugins.filter(jar -> jar.getFileName().toString().startsWith("org.eclipse.equinox.launcher_"))
                    .findFirst().orElseThrow(() -> new IOException("no launcher in " + INSTALLED));
        }
    }

    /** The whole log of the workspace when it holds an error, else nothing. */
    private static String errorsIn(Path workspace) throws IOException {
        Path log = workspace.resolve(".metadata/.log");
        if (!Files.exists(log)) {
            return "";
        }
        String text = Files.readString(log);
        return text.lines().anyMatch(line -> line.matches("!ENTRY \\S+ 4 .*")) ? text : "";
    }

    private static Stream<String> names(List<Bundle> bundles) {
        return bundles.stream().map(Bundle::name);
    }

    private static List<Bundle> bundles(Path installation) throws IOException {
        Path list = installation.resolve("configuration/org.eclipse.equinox.simpleconfigurator/bundles.info");
        return Files.readAllLines(list).stream().filter(line -> !line.startsWith("#")).map(Bundle::of).toList();
    }

    /** One line of the platform's list of bundles. */
    private record Bundle(String name, String version, String location, int startLevel, boolean started) {

        /** What the platform gives to a bundle about which nobody said anything. */
        private static final int DEFAULT_START_LEVEL = 4;

        static Bundle of(String line) {
            String[] fields = line.split(",");
            return new Bundle(fields[0], fields[1], fields[2], Integer.parseInt(fields[3]),
                    Boolean.parseBoolean(fields[4]));
        }

        boolean hasStartLevelOfItsOwn() {
            return started || startLevel != DEFAULT_START_LEVEL;
        }

        String at(Path jar) {
            return "%s,%s,%s,%d,%b".formatted(name, version, jar.toUri(), startLevel, started);
        }
    }
}
