package turnheel.exchange.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import javax.xml.XMLConstants;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;

import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** The transitional schemas of ECMA-376, read by the platform and not by the library that wrote the file. */
final class OfficeSchemas {

    private static final Path FOLDER = Path.of("target", "schemas", "org", "apache", "poi", "schemas", "ooxml", "src");
    private static final List<String> FILES = List.of("sml.xsd", "dml-spreadsheetDrawing.xsd",
            "shared-documentPropertiesExtended.xsd", "opc-relationships.xsd");
    /** Content types and core properties belong to part 2 of the standard and need schemas from elsewhere. */
    private static final Set<String> OF_THE_PACKAGE = Set.of("[Content_Types].xml", "docProps/core.xml");
    /** The attribute by which every program keeps blanks at the ends of a text; the standard's schema forgot it. */
    private static final String BLANKS_KEPT = "the attribute, 'xml:space' was found.";

    private final Schema schema;
    private final Set<String> validated = new TreeSet<>();

    OfficeSchemas() throws SAXException {
        if (Files.notExists(FOLDER)) {
            throw new AssertionError("there are no schemas in %s: a build with Maven puts them there"
                    .formatted(FOLDER.toAbsolutePath()));
        }
        schema = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(
                FILES.stream().map(FOLDER::resolve).map(Path::toFile).map(StreamSource::new).toArray(Source[]::new));
    }

    /** Names of the parts that were looked at, over all workbooks. */
    Set<String> validated() {
        return validated;
    }

    /** A line for each fault in any part of a workbook. */
    List<String> faults(byte[] workbook) throws IOException, SAXException {
        List<String> faults = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                String name = part.getName();
                if ((name.endsWith(".xml") || name.endsWith(".rels")) && !OF_THE_PACKAGE.contains(name)) {
                    validated.add(name);
                    faults.addAll(faults(name, zip.readAllBytes()));
                }
            }
        }
        return faults;
    }

    List<String> faults(String name, byte[] part) throws IOException, SAXException {
        List<String> faults = new ArrayList<>();
        Validator validator = schema.newValidator();
        validator.setErrorHandler(new ErrorHandler() {
            @Override
            public void warning(SAXParseException fault) {
                faults.add(name + ": " + fault.getMessage());
            }

            @Override
            public void error(SAXParseException fault) {
                if (!fault.getMessage().endsWith(BLANKS_KEPT)) {
                    faults.add(name + ": " + fault.getMessage());
                }
            }

            @Override
            public void fatalError(SAXParseException fault) {
                faults.add(name + ": " + fault.getMessage());
            }
        });
        validator.validate(new StreamSource(new ByteArrayInputStream(part)));
        return faults;
    }
}
