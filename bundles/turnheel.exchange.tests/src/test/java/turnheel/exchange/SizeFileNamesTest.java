package turnheel.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;

class SizeFileNamesTest {

    private static final Path TARGET = Path.of("out", "my.socks.html");

    @TempDir
    Path folder;

    private static List<String> names(String... labels) {
        return SizeFileNames.of(TARGET, List.of(labels)).values().stream().map(file -> file.getFileName().toString())
                .toList();
    }

    @Test
    void namesAFileAfterEachLabel() {
        assertEquals(List.of("my.socks-M.html", "my.socks-EU-38.html", "my.socks-2\u00BD.html".replace("\u00BD", ""),
                "my.socks-Gr\u00F6\u00DFe-2.html"), names("M", "EU 38", "2\u00BD", "Gr\u00F6\u00DFe 2"));
    }

    @Test
    void tellsLabelsApartThatWouldGiveOneName() {
        assertEquals(List.of("my.socks-S-M.html", "my.socks-S-M-2.html", "my.socks-s-m-3.html", "my.socks-S-M-2-2.html"),
                names("S/M", "S-M", "s m", "S-M-2"));
    }

    @Test
    void nothingInALabelLeadsElsewhere() {
        List<String> labels = new ArrayList<>(NastyTexts.all().stream().distinct().toList());
        Map<String, Path> files = SizeFileNames.of(TARGET, labels);
        Set<String> seen = new HashSet<>();
        files.forEach((label, file) -> {
            assertEquals(TARGET.getParent(), file.normalize().getParent(), label);
            String name = file.getFileName().toString();
            assertTrue(name.startsWith("my.socks-") && name.endsWith(".html"), name);
            assertTrue(name.codePoints().noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT
                    || "/\\:*?\"<>| ".indexOf(c) >= 0), name);
            assertTrue(name.getBytes(StandardCharsets.UTF_8).length <= 200, name);
            assertTrue(seen.add(name.toLowerCase(Locale.ROOT)), name);
        });
        assertEquals(labels.size(), files.size());
    }

    @ParameterizedTest
    @EnumSource(ExportFormat.class)
    void writesTheEditionOfEverySize(ExportFormat format) throws IOException, ExportException {
        Graded graded = Patterns.grade(Designs.cuffDown());
        Path target = folder.resolve("socks" + format.ending());
        if (format.kind() == ExportFormat.Kind.WHOLE) {
            String refused = assertThrows(ExportException.class,
                    () -> Exports.writeEach(graded, Edition.usual(), target, false)).getMessage();
            assertTrue(refused.contains(format.ending() + " file holds every size"), refused);
            return;
        }
        Map<String, Path> files = Exports.writeEach(graded, Edition.usual(), target, false);
        assertEquals(graded.sizes().stream().map(size -> size.label()).toList(), List.copyOf(files.keySet()));
        for (Map.Entry<String, Path> file : files.entrySet()) {
            Path alone = folder.resolve("alone" + format.ending());
            Exports.write(graded, Edition.usual().onlySize(file.getKey()), alone, true);
            assertEquals(-1, Files.mismatch(alone, file.getValue()));
        }
    }

    @Test
    void writesNothingWhereOneFileIsInTheWay() throws IOException {
        Graded graded = Patterns.grade(Designs.cuffDown());
        Path last = folder.resolve("socks-" + graded.sizes().getLast().label().replace('/', '-') + ".svg");
        Files.writeString(last, "precious");
        assertThrows(ExportException.class,
                () -> Exports.writeEach(graded, Edition.usual(), folder.resolve("socks.svg"), false));
        assertEquals("precious", Files.readString(last));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
        assertFalse(Files.exists(folder.resolve("socks.svg")));
    }
}
