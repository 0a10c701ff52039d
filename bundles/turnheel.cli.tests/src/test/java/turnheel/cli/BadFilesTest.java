package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is wrong with a file, every verb that reads one says so in one line and leaves everything as it was. */
class BadFilesTest {

    private static final List<List<String>> READING = List.of(List.of("set", "FILE", "foot.stitches[M]=64"),
            List.of("grade", "FILE"), List.of("grade", "FILE", "--json"),
            List.of("grade", "FILE", "--why", "foot.stitches[M]"), List.of("rounds", "FILE", "--size", "M"), List.of("check", "FILE"), List.of("check", "FILE", "--json"),
            List.of("export", "FILE", "--to", "OUT"));

    @TempDir
    private Path folder;

    /** What was done to a good file, and what the message must say beside the file's name. */
    private enum Damage {
        TRUNCATED(content -> content.substring(0, content.length() / 2), ":"),
        BROKEN_TAG(content -> content.replace("</size>", "</siez>"), ":"),
        EMPTY(content -> "", ""),
        FOREIGN(content -> "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "svg"),
        NOT_XML(content -> "PK\u0003\u0004 not a pattern", ""),
        TOO_NEW(content -> content.replace("format=\"1\"", "format=\"99\""), "99"),
        NO_FORMAT(content -> content.replace("format=\"1\"", ""), "format"),
        FOREIGN_ENTITY(content -> content.replaceFirst("\\?>",
                "?><!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>"), "DOCTYPE"),
        UNKNOWN_KEY(content -> content.replace("body.footLength", "body.footWidth"), "body.footWidth"),
        UNKNOWN_UNIT(content -> content.replace("240 mm", "240 ell"), "240 ell"),
        UNKNOWN_TOE(content -> content.replace("RoundToe", "SquareToe"), "SquareToe"),
        RESULT_AS_OVERRIDE(content -> content.replaceFirst("</size>",
                "<override key=\"foot.sole\" value=\"9\"/></size>"), "foot.sole"),
        ZERO_GAUGE(content -> content.replace("32/10 cm", "0/10 cm"), "0"),
        NEGATIVE_GAUGE(content -> content.replace("32/10 cm", "-32/10 cm"), "-32"),
        ABSURD_GAUGE(content -> content.replace("32/10 cm", "3200/10 cm"), "3200"),
        NO_SIZES(content -> content.replaceAll("(?s)<size.*</size>", ""), "size"),
        ONE_LABEL_TWICE(content -> content.replace("label=\"L\"", "label=\"M\""), "\"M\""),
        ONE_ID_TWICE(content -> content.replace("id=\"l\"", "id=\"m\""), "\"m\"");

        private final UnaryOperator<String> change;
        private final String says;

        Damage(UnaryOperator<String> change, String says) {
            this.change = change;
            this.says = says;
        }
    }

    static Stream<Arguments> everyDamageToEveryReader() {
        return Arrays.stream(Damage.values())
                .flatMap(damage -> READING.stream().map(command -> Arguments.of(damage, command)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("everyDamageToEveryReader")
    void damageIsRefusedWithItsPlace(Damage damage, List<String> command) throws IOException {
        Path file = Patterns.toeUp(folder);
        String good = Files.readString(file);
        String bad = damage.change.apply(good);
        assertNotEquals(good, bad);
        Files.writeString(file, bad);
        run(command, file).refused(file, damage.says);
        assertEquals(bad, Files.readString(file));
        assertEquals(List.of(file.getFileName().toString()), names());
    }

    @Test
    void textThatIsNotUtf8IsRefused() throws IOException {
        Path file = Patterns.toeUp(folder);
        byte[] latin1 = Files.readString(file).replace("title=\"gull\"", "title=\"Möwe\"")
                .getBytes(StandardCharsets.ISO_8859_1);
        Files.write(file, latin1);
        for (List<String> command : READING) {
            run(command, file).refused(file, "UTF-8");
        }
        assertArrayEquals(latin1, Files.readAllBytes(file));
    }

    @Test
    void aMissingFileIsRefused() throws IOException {
        Path file = folder.resolve("no-such.turnheel");
        for (List<String> command : READING) {
            run(command, file).refused(file, "there is no such file");
        }
        assertEquals(List.of(), names());
    }

    @Test
    void aFolderInPlaceOfAFileIsRefused() throws IOException {
        Path file = Files.createDirectory(folder.resolve("folder.turnheel"));
        for (List<String> command : READING) {
            run(command, file).refused(file, "folder");
        }
        Run.of("new", file, "--sizes", "women", "--force").refused(file, "folder");
        assertEquals(List.of("folder.turnheel"), names());
    }

    @Test
    void aFileOfAnotherNameIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("letter.odt"), "Dear knitter");
        for (List<String> command : READING) {
            run(command, file).refused(file, ".turnheel");
        }
        assertEquals("Dear knitter", Files.readString(file));
    }

    @Test
    void aNameThatNoFileCanHaveIsRefused() {
        for (List<String> command : READING) {
            List<String> named = command.stream().map(word -> word.equals("FILE") ? "nul\0.turnheel"
                    : word.equals("OUT") ? "nul\0.csv" : word).toList();
            Run.of(named.toArray()).refused("cannot be the name of a file");
        }
    }

    @Test
    void aPlaceWhereNothingCanBeWrittenIsRefused() throws IOException {
        Path file = Patterns.toeUp(folder);
        byte[] before = Files.readAllBytes(file);
        Path below = file.resolve("below.turnheel");
        Run.of("new", below, "--sizes", "women").refused(below, "cannot be written");
        Path missing = folder.resolve("missing/new.turnheel");
        Run.of("new", missing, "--sizes", "women").refused(missing, "no such folder");
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals(List.of("gull.turnheel"), names());
    }

    private Run run(List<String> command, Path file) {
        return Run.of(command.stream().map(word -> switch (word) {
            case "FILE" -> file;
            case "OUT" -> folder.resolve("out.csv");
            default -> word;
        }).toArray());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return new ArrayList<>(files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }
}
