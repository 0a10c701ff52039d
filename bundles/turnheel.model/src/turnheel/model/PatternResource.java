package turnheel.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.XMLSave;
import org.eclipse.emf.ecore.xmi.impl.XMLResourceImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLSaveImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLString;

import turnheel.model.pattern.Pattern;

/**
 * The file of one pattern, for EMF. Written by EMF's own writer with settings of its own, whatever options are given,
 * so that the same document is always the same bytes; read by {@link PatternReader}.
 */
final class PatternResource extends XMLResourceImpl {

    private static final String LINE_END = "\n";
    private static final Map<String, Object> SAVE_OPTIONS = Map.of(
            XMLResource.OPTION_ENCODING, "UTF-8",
            XMLResource.OPTION_LINE_DELIMITER, LINE_END,
            XMLResource.OPTION_EXTENDED_META_DATA, true,
            // A default that changes one day must not change the patterns that relied on it.
            XMLResource.OPTION_KEEP_DEFAULT_CONTENT, true);

    PatternResource(URI uri) {
        super(uri);
    }

    @Override
    public void doLoad(InputStream content, Map<?, ?> options) throws IOException {
        try {
            getContents().add(PatternFiles.read(content, getURI().toString()));
        } catch (DocumentException unreadable) {
            throw new IOWrappedException(unreadable);
        }
    }

    @Override
    public void doSave(OutputStream out, Map<?, ?> options) throws IOException {
        write((Pattern) getContents().getFirst(), out);
    }

    /** Writes a document that may be in another resource, or in none. */
    static void write(Pattern pattern, OutputStream out) throws IOException {
        PatternResource neutral = new PatternResource(null);
        Map<Object, Object> options = new HashMap<>(SAVE_OPTIONS);
        options.put(XMLResource.OPTION_ROOT_OBJECTS, List.of(pattern));
        neutral.createXMLSave().save(neutral, out, options);
    }

    @Override
    protected XMLSave createXMLSave() {
        return new XMLSaveImpl(createXMLHelper()) {
            @Override
            protected void init(XMLResource resource, Map<?, ?> options) {
                super.init(resource, options);
                doc = new Lines();
                doc.setLineSeparator(LINE_END);
            }
        };
    }

    /**
     * Lines that read well in a comparison: one for each attribute of the pattern, one for each element inside of it.
     */
    private static final class Lines extends XMLString {
        private static final long serialVersionUID = 1L;

        @Override
        public void startElement(String name) {
            setLineWidth(elementNames.isEmpty() ? 0 : Integer.MAX_VALUE);
            super.startElement(name);
        }
    }
}
