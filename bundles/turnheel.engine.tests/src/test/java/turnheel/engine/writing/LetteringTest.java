package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Graded;
import turnheel.engine.knitting.Knitted;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.query.Severity;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;

/** A text with letters says what the text with lists says: every size finds its own numbers in the tables. */
class LetteringTest {

    private static final int LONGEST = 32;

    static Stream<Draft> everyKindInTwelveSizes() {
        return Designs.everyKindInBothDirections(Designs.toeUpInTwelveSizes()).stream();
    }

    @Test
    void putsALetterForAListThatIsTooLongAndItsNumbersIntoATable() {
        Phrase listed = new Phrase().add("K").add(List.of(values("10", "11", "12", "13", "14")))
                .add(" every ").add(List.of(values("4", "4", "6", "6", "8"))).add("th rnd, ")
                .add(List.of(values("10", "11", "12", "13", "14"))).add(" times");
        List<String> sizes = List.of("XS", "S", "M", "L", "A");
        HouseStyle style = HouseStyles.usual().inColumn(16);
        List<Lettered> lettered = Lettering.of(List.of(new Paragraph(Role.HEADING, Phrase.words("Leg")),
                new Paragraph(Role.INSTRUCTION, listed.pieces())), style, sizes);
        // A is a size here
        assertEquals("K B every 4 (4, 6, 6, 8)th rnd, B times", PlainText.of(lettered.getLast().paragraph().pieces(), style));
        SmallTable table = lettered.getLast().tables().getFirst();
        assertEquals("Leg: what B stands for", table.caption());
        assertEquals(List.of("B"), table.letters());
        assertEquals(List.of("10", "11", "12", "13", "14"), table.rows().stream().map(row -> row.values().getFirst())
                .toList());
        assertEquals(sizes, table.rows().stream().map(SmallTable.Row::size).toList());
    }

    @Test
    void setsAHyphenBetweenALetterAndTheEndOfAnOrdinal() {
        Phrase listed = new Phrase().add("every ").add(List.of(values("4", "6", "8", "10", "12", "14"))).add("th rnd");
        List<Lettered> lettered = Lettering.of(List.of(new Paragraph(Role.INSTRUCTION, listed.pieces())),
                HouseStyles.usual().inColumn(16), List.of("1", "2", "3", "4", "5", "6"));
        assertEquals("every A-th rnd", PlainText.of(lettered.getFirst().paragraph().pieces(), HouseStyles.usual()));
        assertEquals("Measurements and materials: what A stands for",
                lettered.getFirst().tables().getFirst().caption());
    }

    private static Piece.Values values(String... each) {
        return new Piece.Values(Stream.of(each).map(Optional::of).toList());
    }

    @ParameterizedTest
    @MethodSource("everyKindInTwelveSizes")
    void everySizeFindsItsOwnNumbers(Draft draft) {
        Graded graded = draft.graded();
        boolean sound = Checks.of(graded).stream().noneMatch(query -> query.severity() == Severity.ERROR);
        for (String name : HouseStyles.SHIPPED) {
            PatternText text = Manuscripts.write(graded, HouseStyles.shipped(name).inColumn(LONGEST));
            List<Lettered> lettered = text.lettered();
            assertTrue(lettered.stream().anyMatch(each -> !each.tables().isEmpty()));
            for (int size = 0; size < text.sizes().size(); size++) {
                List<Paragraph> found = substituted(lettered, size);
                assertEquals(projected(text.paragraphs(), size), said(found));
                compareWithItsEdition(text, found, size);
                if (sound && name.equals(HouseStyles.SHIPPED.getFirst()) && isKnitted(size)) {
                    knitsAsItsEdition(text, found, size);
                }
            }
        }
    }

    /** Every size takes minutes. */
    private static boolean isKnitted(int size) {
        return size == 0 || size == 11 || Boolean.getBoolean("turnheel.deep");
    }

    /** What a knitter of one size reads who looks every letter up. */
    private static List<Paragraph> substituted(List<Lettered> lettered, int size) {
        List<Paragraph> found = new ArrayList<>();
        for (int at = 0; at < lettered.size(); at++) {
            Paragraph paragraph = lettered.get(at).paragraph();
            if (at > 0 && lettered.get(at - 1).paragraph().role() == Role.SIZES) {
                // the note on letters, which the text with lists has not
                assertEquals(Role.NOTE, paragraph.role());
                continue;
            }
            Map<String, String> letters = ofSection(lettered, at, size);
            List<Piece> pieces = new ArrayList<>();
            for (Piece piece : paragraph.pieces()) {
                pieces.add(piece instanceof Piece.Values(var each) && each.size() == 1
                        && letters.containsKey(each.getFirst().orElse(""))
                                ? new Piece.Values(List.of(Optional.of(letters.get(each.getFirst().orElseThrow()))))
                                : piece);
            }
            found.add(new Paragraph(paragraph.role(), ofSize(pieces, size)));
        }
        return found;
    }

    /** The letters of all tables between the heading above and the one below. */
    private static Map<String, String> ofSection(List<Lettered> lettered, int at, int size) {
        int from = at;
        while (from > 0 && lettered.get(from).paragraph().role() != Role.HEADING) {
            from--;
        }
        Map<String, String> letters = new HashMap<>();
        for (int next = from; next < lettered.size()
                && (next == from || lettered.get(next).paragraph().role() != Role.HEADING); next++) {
            for (SmallTable table : lettered.get(next).tables()) {
                for (int column = 0; column < table.letters().size(); column++) {
                    assertNull(letters.put(table.letters().get(column), table.rows().get(size).values().get(column)),
                            "one letter for two lists");
                }
            }
        }
        return letters;
    }

    private static List<Piece> ofSize(List<Piece> pieces, int size) {
        return pieces.stream().<Piece>map(piece -> piece instanceof Piece.Values(var each) && each.size() > 1
                ? new Piece.Values(List.of(each.get(size))) : piece).toList();
    }

    private static List<String> projected(List<Paragraph> paragraphs, int size) {
        return said(paragraphs.stream().map(paragraph -> new Paragraph(paragraph.role(),
                ofSize(paragraph.pieces(), size))).toList());
    }

    /** Blanks and hyphens beside a letter are no difference. */
    private static List<String> said(List<Paragraph> paragraphs) {
        return paragraphs.stream().map(paragraph -> text(paragraph).replace(" ", "").replaceAll("(?<=\\d)-th", "th"))
                .toList();
    }

    private static String text(Paragraph paragraph) {
        return PlainText.of(paragraph.pieces(), HouseStyles.usual());
    }

    /** Where no number is 1 or missing, which has words of its own there, the edition for the size says the same. */
    private static void compareWithItsEdition(PatternText text, List<Paragraph> found, int size) {
        Set<String> edition = said(text.onlySize(text.sizes().get(size)).paragraphs()).stream()
                .collect(Collectors.toSet());
        int compared = 0;
        for (Paragraph paragraph : found) {
            boolean own = paragraph.role() == Role.SIZES || text(paragraph).contains(" only: ")
                    // an odd cast-on in another size keeps the halves from being told
                    || text(paragraph).contains("closed cast-on")
                    || paragraph.pieces().stream().anyMatch(piece -> piece instanceof Piece.Values(var each)
                            && (each.getFirst().isEmpty() || Set.of("1", "\u2013").contains(each.getFirst().get())))
                    || paragraph.role() == Role.ABBREVIATION;
            if (!own) {
                assertTrue(edition.containsAll(said(List.of(paragraph))), () -> text(paragraph) + " is not in " + edition);
                compared++;
            }
        }
        assertTrue(compared > 15, "only " + compared + " paragraphs were compared");
    }

    private static void knitsAsItsEdition(PatternText text, List<Paragraph> found, int size) {
        String label = text.sizes().get(size);
        PatternText edition = text.onlySize(label);
        String whole = text.text(edition.paragraphs().stream().filter(paragraph -> paragraph.role() == Role.SIZES)
                .findFirst().orElseThrow());
        StringBuilder typed = new StringBuilder();
        for (Paragraph paragraph : found) {
            String line = paragraph.role() == Role.SIZES ? whole : text(paragraph);
            int only = line.indexOf(" only: ");
            if (only > 0 && !List.of(line.substring(0, only).split("^Sizes? |, | and ")).contains(label)) {
                continue;
            }
            typed.append(paragraph.role() == Role.HEADING ? "\n" : "").append(line.substring(only < 0 ? 0 : only + 7))
                    .append("\n").append(paragraph.role() == Role.TITLE ? "\n" : "");
        }
        Knitted byEdition = Manuscript.read(Renderings.plain(edition)).knit();
        Knitted byLetters = Manuscript.read(typed.toString()).knit();
        assertEquals(List.of(), byEdition.queries(), () -> Renderings.plain(edition));
        assertEquals(rounds(byEdition), rounds(byLetters), () -> typed + "\n" + Renderings.plain(edition));
        assertTrue(rounds(byEdition).size() > 20);
    }

    private static List<String> rounds(Knitted knitted) {
        return knitted.traces().getFirst().stream().filter(traced -> traced.rounds() > 0)
                .map(traced -> "%d rounds, %d stitches, %d open, %d on hold".formatted(traced.rounds(),
                        traced.stitches(), traced.openYarnOvers(), traced.onHold()))
                .toList();
    }
}
