package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import turnheel.model.DocumentProblem.Kind;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternFactory;

class PatternFilesTest {

    @TempDir
    private Path folder;

    @Test
    void writesOneLineForEachAttributeOfThePatternAndEachElement() throws DocumentException {
        assertEquals(Patterns.HARBOUR_TEXT, Patterns.written(Documents.pattern(Patterns.harbour())));
    }

    @Test
    void readsWhatItWrote() throws DocumentException {
        Path file = folder.resolve("harbour.turnheel");
        Pattern pattern = Documents.pattern(Patterns.harbour());
        PatternFiles.save(pattern, file);
        assertTrue(EcoreUtil.equals(pattern, PatternFiles.load(file)));
    }

    @Test
    void savingWhatWasReadKeepsEveryByte() throws Exception {
        Path file = Files.writeString(folder.resolve("harbour.turnheel"), Patterns.HARBOUR_TEXT);
        PatternFiles.save(PatternFiles.load(file), file);
        assertEquals(Patterns.HARBOUR_TEXT, Files.readString(file));
    }

    @Test
    void savingTouchesNeitherTheDocumentNorItsResource() throws DocumentException {
        Pattern pattern = Patterns.read(Patterns.HARBOUR_TEXT);
        Resource resource = pattern.eResource();
        PatternFiles.bytes(pattern, "other.turnheel");
        assertSame(resource, pattern.eResource());
        assertEquals(List.of(pattern), resource.getContents());
    }

    @Test
    void theResourceReadsAndWritesTheSameFile() throws Exception {
        Path file = Files.writeString(folder.resolve("harbour.turnheel"), Patterns.HARBOUR_TEXT);
        Resource resource = PatternFiles.load(file).eResource();
        assertEquals(file.toString(), resource.getURI().toFileString());
        resource.unload();
        resource.load(null);
        resource.save(null);
        assertEquals(Patterns.HARBOUR_TEXT, Files.readString(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "  two  blanks  ", "<b>&amp;\"'", "]]>", "one\ntwo\n", "one\r\ntwo\rthree",
            "\ttab\t", "\n",
            "Größe · 靴下 · 🧦", "=1+1", "\u0085\u2028\uFFFD"})
    void keepsEveryTextAsItIs(String text) throws DocumentException {
        Pattern pattern = Documents.pattern(Patterns.harbour());
        pattern.setTitle(text);
        pattern.setDesigner(text);
        pattern.setNotes(text);
        pattern.getSizes().getFirst().setLabel(text);
        Pattern read = Patterns.read(Patterns.written(pattern));
        assertEquals(List.of(text, text, text, text),
                List.of(read.getTitle(), read.getDesigner(), read.getNotes(), read.getSizes().getFirst().getLabel()));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 0x1B, 0xD83E, 0xDD7F, 0xFFFE})
    void refusesToWriteWhatNoFileCanKeep(int character) throws Exception {
        Path file = Files.writeString(folder.resolve("harbour.turnheel"), Patterns.HARBOUR_TEXT);
        Pattern pattern = PatternFiles.load(file);
        pattern.setNotes("before" + (char) character);
        DocumentException refused = assertThrows(DocumentException.class, () -> PatternFiles.save(pattern, file));
        assertEquals(Kind.UNWRITABLE_TEXT, refused.problems().getFirst().kind());
        assertEquals(List.of("notes", "%04X".formatted(character)), refused.problems().getFirst().values());
        assertEquals(Patterns.HARBOUR_TEXT, Files.readString(file));
    }

    @Test
    void keepsAnUnfinishedDocument() throws DocumentException {
        Pattern empty = PatternFactory.eINSTANCE.createPattern();
        Pattern read = Patterns.read(Patterns.written(empty));
        assertTrue(EcoreUtil.equals(empty, read));
        assertNull(read.getToe());
    }

    @Test
    void everyClassOfTheEcoreComesBackWithEveryAttributeSet() throws DocumentException {
        for (EObject object : EveryClass.onePerConcreteClass()) {
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                Object value = EveryClass.otherThanDefault(attribute);
                object.eSet(attribute, attribute.isMany() ? List.of(value) : value);
            }
            Pattern pattern = EveryClass.patternWith(object);
            Pattern read = Patterns.read(Patterns.written(pattern));
            assertTrue(EcoreUtil.equals(pattern, read), object.eClass().getName());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r", "\n\n"})
    void readsAnyLineEnds(String lineEnd) throws DocumentException {
        Pattern read = Patterns.read(Patterns.HARBOUR_TEXT.replace("\n", lineEnd));
        assertEquals(Patterns.HARBOUR_TEXT, Patterns.written(read));
    }

    @Test
    void readsAFileThatStartsWithAByteOrderMark() throws DocumentException {
        assertEquals(Patterns.HARBOUR_TEXT, Patterns.written(Patterns.read("\uFEFF" + Patterns.HARBOUR_TEXT)));
    }

    @Test
    void readsAnotherPrefixAndAnotherOrder() throws DocumentException {
        Pattern read = Patterns.read("""
                <t:Pattern xmlns:t="urn:turnheel:pattern" format='1'
                    xmlns:i="http://www.w3.org/2001/XMLSchema-instance">
                  <size label="M" id="m"/>
                  <notes><![CDATA[<plain>]]></notes>
                  <toe i:type="t:WedgeToe"/>
                </t:Pattern>
                """);
        assertEquals("<plain>", read.getNotes());
        assertEquals("m", read.getSizes().getFirst().getId());
        assertEquals("WedgeToeElement", read.getToe().eClass().getName());
    }

    @Test
    void namesTheFileThatIsNotThere() {
        Path file = folder.resolve("none.turnheel");
        DocumentException missing = assertThrows(DocumentException.class, () -> PatternFiles.load(file));
        assertEquals(List.of(new DocumentProblem(Kind.NOT_THERE, 0, 0, List.of())), missing.problems());
        assertTrue(missing.getMessage().startsWith(file + ": "), missing.getMessage());
    }

    @Test
    void refusesAFolder() {
        DocumentException unreadable = assertThrows(DocumentException.class, () -> PatternFiles.load(folder));
        assertEquals(Kind.UNREADABLE, unreadable.problems().getFirst().kind());
    }

    @Test
    void namesTheFileThatCannotBeWritten() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "kept").resolve("inside.turnheel");
        Pattern pattern = Documents.pattern(Patterns.harbour());
        DocumentException unwritable = assertThrows(DocumentException.class, () -> PatternFiles.save(pattern, file));
        assertEquals(Kind.UNWRITABLE, unwritable.problems().getFirst().kind());
        assertTrue(unwritable.getMessage().startsWith(file + ": "), unwritable.getMessage());
        assertEquals("kept", Files.readString(folder.resolve("file"), StandardCharsets.UTF_8));
    }
}
