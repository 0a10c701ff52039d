package turnheel.exchange.html;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

import turnheel.exchange.document.Document;
import turnheel.exchange.drawing.SvgWriter;

/** Writes documents as pages for screen and paper, with their pictures as vectors. */
public final class HtmlWriter {

    private HtmlWriter() {
    }

    /** Writes one file. The same document gives the same bytes; the stream is not closed. */
    public static void write(Document document, OutputStream out) throws IOException {
        String page = HtmlPage.of(document, PageStyle.of(document), SvgWriter::element);
        out.write(page.getBytes(StandardCharsets.UTF_8));
    }
}
