package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import turnheel.model.DocumentProblem.Kind;

class RefusedFilesTest {

    private static final String TOES = "turnheel:RoundToe, turnheel:WedgeToe, turnheel:StarToe, turnheel:ShortRowToe, "
            + "turnheel:AsymmetricToe";

    /** Each is the harbour pattern with one text replaced by another; lines and columns were counted by hand. */
    static Stream<Arguments> spoiledFiles() {
        return Stream.of(
                spoiled("format=\"1\"", "format=\"2\"", Kind.NEWER_FORMAT, 3, 5, "2", "1"),
                spoiled("format=\"1\"", "format=\"2\" colour=\"blue\"", Kind.NEWER_FORMAT, 3, 5, "2", "1"),
                spoiled("format=\"1\"", "format=\"99999999999\"", Kind.NEWER_FORMAT, 3, 5, "99999999999", "1"),
                spoiled("format=\"1\"", "format=\"0\"", Kind.BAD_FORMAT, 3, 5, "0", "1"),
                spoiled("format=\"1\"", "format=\"one\"", Kind.BAD_FORMAT, 3, 5, "one", "1"),
                spoiled("format=\"1\"", "", Kind.NO_FORMAT, 2, 1, "1"),
                spoiled("urn:turnheel:pattern", "urn:other",
                        Kind.FOREIGN, 2, 1, "turnheel:Pattern", "urn:turnheel:pattern"),
                spoiled("direction=\"toe-up\"", "direction=\"up\"",
                        Kind.BAD_VALUE, 5, 5, "direction", "\"up\" is unknown; write toe-up or cuff-down"),
                spoiled("stitchGauge=\"32/10 cm\"", "stitchGauge=\"240 mm\"",
                        Kind.BAD_VALUE, 6, 5, "stitchGauge",
                        "\"240 mm\" is not a gauge; write one such as 32/10 cm or 8/1 in"),
                spoiled("lines=\"4\"", "lines=\"four\"", Kind.NOT_WHOLE, 8, 37, "lines", "four"),
                spoiled("lines=\"4\"", "lines=\"\"", Kind.NOT_WHOLE, 8, 37, "lines", ""),
                spoiled("lines=\"4\"", "lines=\"4\" points=\"8\"",
                        Kind.UNKNOWN_ATTRIBUTE, 8, 47, "points", "RoundToe", "lines, increase, castOn, lean"),
                spoiled("turnheel:RoundToe", "turnheel:SockToe",
                        Kind.UNKNOWN_KIND, 8, 8, "turnheel:SockToe", "toe", TOES),
                spoiled("turnheel:RoundToe", "turnheel:RibCuff",
                        Kind.UNKNOWN_KIND, 8, 8, "turnheel:RibCuff", "toe", TOES),
                spoiled("turnheel:RoundToe", "RoundToe",
                        Kind.UNKNOWN_KIND, 8, 8, "RoundToe", "toe", TOES),
                spoiled("xsi:type=\"turnheel:RoundToe\"", "",
                        Kind.NO_KIND, 8, 3, "toe", TOES),
                spoiled("<size id=\"l\"", "<colour/><size id=\"l\"",
                        Kind.UNKNOWN_ELEMENT, 17, 3, "colour", "turnheel:Pattern",
                        "notes, toe, heel, leg, cuff, stitchPattern, materials, lengths, size, ownRow"),
                spoiled("<input key=\"body.footLength\" value=\"255 mm\"/>", "<toe><toe/></toe>",
                        Kind.UNKNOWN_ELEMENT, 18, 5, "toe", "size", "input, override"),
                spoiled("<size id=\"l\"", "<leg xsi:type=\"turnheel:StraightLeg\"/><size id=\"l\"",
                        Kind.REPEATED, 17, 3, "leg"),
                spoiled("<size id=\"l\"", "<title>Harbour</title><size id=\"l\"",
                        Kind.UNKNOWN_ELEMENT, 17, 3, "title", "turnheel:Pattern",
                        "notes, toe, heel, leg, cuff, stitchPattern, materials, lengths, size, ownRow"),
                spoiled("<size id=\"l\"", "stray<size id=\"l\"", Kind.STRAY_TEXT, 17, 3, "stray"),
                spoiled("<size id=\"l\"", "\n a &amp; b<size id=\"l\"", Kind.STRAY_TEXT, 18, 2, "a"),
                spoiled("<size id=\"l\"", "<!-- <mine>\n --><size id=\"l\"", Kind.COMMENT, 17, 3),
                spoiled("<size id=\"l\"", "<?mine yes?><size id=\"l\"", Kind.COMMENT, 17, 3),
                spoiled("<size id=\"l\"", "<notes lang=\"en\"/><size id=\"l\"",
                        Kind.UNKNOWN_ATTRIBUTE, 17, 10, "lang", "notes", "nothing"),
                spoiled("<size id=\"l\"", "<notes><b/></notes><size id=\"l\"",
                        Kind.UNKNOWN_ELEMENT, 17, 10, "b", "notes", "nothing"),
                spoiled("lines=\"4\"", "href=\"other.turnheel#/\"", Kind.REFERENCE, 8, 37, "href"),
                spoiled("format=\"1\"", "format=\"1\" toe=\"other.turnheel#//toe\"",
                        Kind.UNKNOWN_ATTRIBUTE, 3, 16, "toe", "Pattern",
                        "format, title, designer, direction, stitchGauge, roundGauge"),
                spoiled("format=\"1\"", "xsi:schemaLocation=\"urn:turnheel:pattern evil.ecore\" format=\"1\"",
                        Kind.REFERENCE, 3, 5, "xsi:schemaLocation"),
                spoiled("format=\"1\"", "format=\"1\" xsi:noNamespaceSchemaLocation=\"evil.ecore\"",
                        Kind.REFERENCE, 3, 16, "xsi:noNamespaceSchemaLocation"),
                spoiled("<heel xsi:type=\"turnheel:ShortRowHeel\" turn=\"wrapped\"/>", "<heel xsi:nil=\"true\"/>",
                        Kind.NO_KIND, 9, 3, "heel",
                        "turnheel:ShortRowHeel, turnheel:FlapHeel, turnheel:AfterthoughtHeel"),
                spoiled("key=\"foot.stitches\"", "key=\"foot\"",
                        Kind.BAD_VALUE, 15, 15, "key", "\"foot\" is not a key; a key looks like foot.stitches"));
    }

    private static Arguments spoiled(String old, String spoilt, Kind kind, int line, int column, String... values) {
        return Arguments.of(old, spoilt, new DocumentProblem(kind, line, column, List.of(values)));
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource("spoiledFiles")
    void saysWhatIsWrongWhere(String old, String spoilt, DocumentProblem expected) {
        assertTrue(Patterns.HARBOUR_TEXT.contains(old), old);
        assertEquals(List.of(expected), problems(Patterns.HARBOUR_TEXT.replace(old, spoilt)));
    }

    @Test
    void countsLinesAndColumnsWithAnyLineEnd() {
        DocumentProblem expected = new DocumentProblem(Kind.NOT_WHOLE, 8, 37, List.of("lines", "four"));
        for (String lineEnd : List.of("\n", "\r\n", "\r")) {
            String text = Patterns.HARBOUR_TEXT.replace("lines=\"4\"", "lines=\"four\"").replace("\n", lineEnd);
            assertEquals(List.of(expected), problems(text));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Größe 🧦", "a &gt; b &quot; lines=&quot;2&quot;", "x lines='7'", "1\n\n2"})
    void isNotLedAstrayByTheTextOfOtherAttributes(String title) {
        String text = Patterns.HARBOUR_TEXT.replace("title=\"Harbour\"", "title=\"" + title + "\" direction2=''");
        int column = title.contains("\n") ? 4 : 5 + "title=\"\" ".length() + title.length();
        int line = title.contains("\n") ? 6 : 4;
        DocumentProblem problem = problems(text).getFirst();
        assertEquals(List.of(Kind.UNKNOWN_ATTRIBUTE, line, column),
                List.of(problem.kind(), problem.line(), problem.column()));
    }

    @Test
    void everyTruncationIsRefusedWithAPlace() {
        String text = Patterns.HARBOUR_TEXT.strip();
        for (int length = 0; length < text.length(); length++) {
            List<DocumentProblem> problems = problems(text.substring(0, length));
            assertEquals(1, problems.size());
            DocumentProblem problem = problems.getFirst();
            assertEquals(Kind.MALFORMED, problem.kind(), "cut at " + length);
            assertTrue(problem.line() >= 1 && problem.column() >= 1, problem.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "{\"format\":1}", "PK\u0003\u0004", "<html/>", "<Pattern format=\"1\"/>",
            "<xmi:XMI xmlns:xmi=\"http://www.omg.org/XMI\"/>",
            "<ecore:EPackage xmlns:ecore=\"http://www.eclipse.org/emf/2002/Ecore\" name=\"x\"/>",
            "<turnheel:Size xmlns:turnheel=\"urn:turnheel:pattern\" format=\"1\"/>",
            "<turnheel:Pattern format=\"1\"/>"})
    void refusesForeignFiles(String text) {
        Kind kind = problems(text).getFirst().kind();
        assertTrue(kind == Kind.FOREIGN || kind == Kind.MALFORMED, kind.toString());
    }

    @Test
    void listsEverythingThatIsWrongInTheOrderOfTheFile() {
        String text = Patterns.HARBOUR_TEXT.replace("toe-up", "sideways").replace("lines=\"4\"", "lines=\"x\"")
                .replace("body.footLength\" value=\"240 mm\"", "body.footLength\" value=\"far\"");
        assertEquals(List.of(5, 8, 13), problems(text).stream().map(DocumentProblem::line).toList());
    }

    @Test
    void doesNotGoOnForEverOverABadFile() {
        String text = Patterns.HARBOUR_TEXT.replace("<size id=\"l\"", "<bad/>".repeat(1000) + "<size id=\"l\"");
        assertEquals(20, problems(text).size());
    }

    @Test
    void refusesDeepNesting() {
        String text = Patterns.HARBOUR_TEXT.replace("<size id=\"l\"", "<x>".repeat(100_000) + "<size id=\"l\"");
        List<DocumentProblem> problems = problems(text);
        assertEquals(List.of(Kind.UNKNOWN_ELEMENT, Kind.TOO_DEEP),
                problems.stream().map(DocumentProblem::kind).toList());
        assertEquals(17, problems.getLast().line());
    }

    @Test
    void refusesAFileThatIsFarTooLarge() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }
        };
        DocumentException refused = assertThrows(DocumentException.class, () -> PatternFiles.load(endless, "endless"));
        assertEquals(List.of(new DocumentProblem(Kind.TOO_LARGE, 0, 0, List.of("8"))), refused.problems());
    }

    @Test
    void refusesOtherEncodingsAtTheFirstBadByte() {
        byte[] latin = Patterns.HARBOUR_TEXT.replace("Harbour", "Größe").getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(List.of(new DocumentProblem(Kind.NOT_UTF8, 4, 14, List.of())), problems(latin));
        assertEquals(List.of(new DocumentProblem(Kind.NOT_UTF8, 1, 1, List.of())),
                problems(Patterns.HARBOUR_TEXT.getBytes(StandardCharsets.UTF_16)));
    }

    @Test
    void neitherReadsNorCallsWhatADoctypeNames(@TempDir Path folder) throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
        try (ServerSocket listener = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            listener.setSoTimeout(200);
            String address = "http://127.0.0.1:" + listener.getLocalPort() + "/x.dtd";
            for (String doctype : List.of(
                    "<!DOCTYPE p SYSTEM \"" + address + "\">",
                    "<!DOCTYPE p [<!ENTITY % e SYSTEM \"" + address + "\"> %e;]>",
                    "<!DOCTYPE p [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>",
                    "<!DOCTYPE p [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>")) {
                String text = Patterns.HARBOUR_TEXT.replace("<turnheel:Pattern", doctype + "\n<turnheel:Pattern")
                        .replace("Harbour", "&e;");
                List<DocumentProblem> problems = problems(text);
                assertEquals(List.of(Kind.DOCTYPE), problems.stream().map(DocumentProblem::kind).toList(), doctype);
                assertEquals(List.of(2, 1), List.of(problems.getFirst().line(), problems.getFirst().column()));
            }
            assertThrows(SocketTimeoutException.class, listener::accept);
        }
    }

    private static List<DocumentProblem> problems(String text) {
        return problems(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<DocumentProblem> problems(byte[] content) {
        return assertThrows(DocumentException.class,
                () -> PatternFiles.load(new ByteArrayInputStream(content), "spoiled.turnheel")).problems();
    }
}
