package turnheel.exchange.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;
import turnheel.exchange.sizes.SizeTableProblem.Kind;

class SizeTableReaderTest {

    private static final Key LENGTH = new Key("body.footLength");
    private static final Key AROUND = new Key("body.footCircumference");

    private static SizeTableReading read(String table) {
        return SizeTableReader.text(table.getBytes(StandardCharsets.UTF_8));
    }

    private static Size size(int number, String label, String length, String around) {
        return new Size("s" + number, label, Map.of(LENGTH, Quantity.parse(length), AROUND, Quantity.parse(around)),
                Map.of());
    }

    private static final List<Size> TWO = List.of(size(1, "M, wide", "9 1/2 in", "24.5 cm"),
            size(2, "L", "260 mm", "25 cm"));

    @ParameterizedTest
    @ValueSource(strings = {
        "size,body.footLength,body.footCircumference\n\"M, wide\",9 1/2 in,24.5 cm\n\nL,260 mm,25 cm\n",
        "\uFEFFsize,foot-length,foot-circumference (cm)\r\n\"M, wide\",9 1/2 in,24.5\r\nL,260mm,25\r\n",
        "Size;Foot length;Foot circumference [cm]\n\"M, wide\";9,5 in;24,5\nL;260 mm;25",
        "foot_circumference cm\tLABEL\tFOOT LENGTH\n24.5\tM, wide\t9-1/2\"\n25\tL\t260 mm\n"})
    void readsEveryWayToWriteTheSame(String table) {
        SizeTableReading reading = read(table);
        assertEquals(List.of(), reading.problems());
        assertEquals(TWO, reading.sizes());
    }

    @Test
    void bareInchesMayHaveFractions() {
        assertEquals(List.of(size(1, "M", "9 1/2 in", "8.75 in")),
                read("size,foot-length (in),foot-circumference (in)\nM,9 1/2,8 3/4\n").sizes());
    }

    @Test
    void easeIsAShareAndMayBeNegative() {
        Size size = read("""
                size,foot-length (mm),ease-around (%),ease-length (mm),gauge.stitches
                M,240,-8,−5,30/10 cm
                """).sizes().getFirst();
        assertEquals(Map.of(LENGTH, Quantity.parse("240 mm"), new Key("fit.easeAround"), Quantity.parse("-8 %"),
                new Key("fit.easeLength"), Quantity.parse("-5 mm"), new Key("gauge.stitches"),
                Quantity.parse("30/10 cm")), size.inputs());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # table, ; for a line end | kind, row, column | sizes left
                                                              | NO_SIZES 0 0             |
            size,foot-length                                  | NO_SIZES 0 0             |
            name,foot-length;M,240 mm                         | NO_LABEL_COLUMN 1 0      |
            size;M;L                                          | NO_FOOT_LENGTH 2 1 NO_FOOT_LENGTH 3 1 | M L
            size,foot-lengh;M,240 mm                          | UNKNOWN_COLUMN 1 2 NO_FOOT_LENGTH 2 1 | M
            size,foot-length,foot.stitches;M,240 mm,64        | UNKNOWN_COLUMN 1 3       | M
            size,foot-length,body.footLength;M,240 mm,250 mm  | DUPLICATE_COLUMN 1 3     | M
            size,foot-length;M,240 mm,9                       | VALUE_WITHOUT_COLUMN 2 3 | M
            size,foot-length;,240 mm;L,250 mm                 | NO_LABEL 2 1             | L
            size,foot-length;M,240 mm;M,260 mm                | DUPLICATE_LABEL 3 1      | M
            size,foot-length;M,240;L,26 cm                    | NO_UNIT 2 2              | M L
            size,foot-length;M,about 24 cm                    | NOT_A_QUANTITY 2 2       | M
            size,foot-length (mm);M,x;L,250                   | NOT_A_QUANTITY 2 2       | M L
            size,foot-length;M,4000 mm                        | REFUSED 2 2              | M
            size,foot-length;M,-10 %                          | REFUSED 2 2              | M
            size,foot-length (cm);M,240                       | REFUSED 2 2              | M
            size,foot-length,leg-height;M,,20 cm              | NO_FOOT_LENGTH 2 2       | M
            size,foot-length,leg-height;M,24 cm,              | EMPTY_CELL 2 3           | M
            size,foot-length;L,26 cm;M,24 cm                  | UNORDERED 3 2            | L M
            size,foot-length;"M,240 mm                        | UNREADABLE 0 0           |
            """)
    void saysWhatIsWrongAndWhereAndReadsTheRest(String table, String expected, String left) {
        SizeTableReading reading = read(table == null ? "" : table.replace(';', '\n'));
        String found = String.join(" ", reading.problems().stream()
                .map(problem -> problem.kind() + " " + problem.row() + " " + problem.column()).toList());
        assertEquals(expected, found);
        assertEquals(left == null ? List.of() : Arrays.asList(left.split(" ")),
                reading.sizes().stream().map(Size::label).toList());
        reading.problems().forEach(problem -> assertTrue(!problem.sentence().contains("{"), problem.sentence()));
    }

    @Test
    void aLabelThatIsTooLongLeavesItsRowOut() {
        SizeTableReading reading = read("size,foot-length\n" + "x".repeat(41) + ",240 mm\nL,250 mm\n");
        assertEquals(List.of(Kind.REFUSED), reading.problems().stream().map(SizeTableProblem::kind).toList());
        assertEquals(1, reading.sizes().size());
    }

    @Test
    void onlyWhatMustBePutRightIsAnError() {
        SizeTableReading reading = read("size,foot-length,leg-height\nL,26 cm,\nM,24 cm,20 cm\nS,22,19 cm\n");
        assertEquals(List.of(Kind.EMPTY_CELL, Kind.UNORDERED, Kind.NO_UNIT),
                reading.problems().stream().map(SizeTableProblem::kind).toList());
        assertEquals(List.of(Kind.NO_UNIT), reading.errors().stream().map(SizeTableProblem::kind).toList());
        assertEquals("row 4, column 2: \"22\" of size S has no unit; write it there, or in the heading as in "
                + "foot-length (mm).",
                reading.errors().getFirst().sentence());
    }

    @Test
    void suggestsTheHeadingThatWasMeant() {
        String sentence = read("size,foot-lenght\nM,240 mm\n").problems().getFirst().sentence();
        assertTrue(sentence.startsWith("row 1, column 2:") && sentence.contains("did you mean foot-length?"), sentence);
    }

    @ParameterizedTest
    @EnumSource
    void everyKindHasItsSentence(Kind kind) {
        String sentence = new SizeTableProblem(kind, 3, 2, "M", "x", "y").sentence();
        assertTrue(sentence.startsWith("row 3, column 2: ") && sentence.endsWith("."), sentence);
    }

    @Test
    void textInAnotherEncodingIsToldApart() {
        SizeTableReading reading = SizeTableReader.text(
                "size,foot-length\ngroß,240 mm\n".getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(reading.sizes().isEmpty());
        assertTrue(reading.problems().getFirst().sentence().contains("UTF-8"));
    }

    @Test
    void aTableWithoutEndIsReadSoFar() {
        StringBuilder table = new StringBuilder("size,foot-length\n");
        for (int i = 0; i < 1200; i++) {
            table.append(i).append(",240 mm\n");
        }
        SizeTableReading reading = read(table.toString());
        assertEquals(999, reading.sizes().size());
        assertEquals(Kind.UNREADABLE, reading.problems().getLast().kind());
    }

    /** Whatever the bytes are, there is an answer. */
    @Property(tries = 300)
    void neverThrows(@ForAll byte[] content) {
        SizeTableReading text = SizeTableReader.text(content);
        assertTrue(!text.sizes().isEmpty() || !text.problems().isEmpty());
    }

    @Property(tries = 300)
    void neverThrowsForTextInCells(@ForAll String one, @ForAll String other) {
        SizeTableReading reading = read("size,foot-length (mm)\n" + one + "," + other + "\n");
        assertTrue(!reading.sizes().isEmpty() || !reading.problems().isEmpty());
    }
}
