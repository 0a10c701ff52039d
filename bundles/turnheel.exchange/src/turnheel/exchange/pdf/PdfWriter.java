package turnheel.exchange.pdf;

import java.io.IOException;
import java.io.OutputStream;

import org.apache.pdfbox.pdmodel.PDDocument;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;

import turnheel.exchange.document.Document;
import turnheel.exchange.typeface.Typeface;

/** Writes a document as a tagged PDF file. The same document gives the same bytes. */
public final class PdfWriter {

    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    static {
        // it tells every length that it computes
        XRLog.setLoggingEnabled(false);
    }

    private PdfWriter() {
    }

    /** Writes one file; the stream is not closed. */
    public static void write(Document document, OutputStream out) throws IOException {
        try (PDDocument file = new PDDocument()) {
            Faces faces = new Faces(file);
            PageMarkup markup = PageMarkup.of(document);
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(file);
            builder.useFastMode();
            builder.usePdfUaAccessibility(true);
            builder.useFont(new PDFontSupplier(faces.font(Typeface.PLAIN)), Typeface.FAMILY, REGULAR, FontStyle.NORMAL,
                    true);
            builder.useFont(new PDFontSupplier(faces.font(Typeface.BOLD)), Typeface.FAMILY, BOLD, FontStyle.NORMAL,
                    true);
            builder.useUnicodeLineBreaker(new LineEnds());
            builder.useReplacementText("\uFFFD");
            builder.useExternalResourceAccessControl((address, kind) -> false,
                    ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
            builder.useObjectDrawerFactory(new Figures(markup.pictures(), file, faces));
            builder.withW3cDocument(markup.tree(), "");
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
            }
            FileNotes.put(document, markup.tree().getDocumentElement().getTextContent(), file);
            file.save(out);
        }
    }
}
