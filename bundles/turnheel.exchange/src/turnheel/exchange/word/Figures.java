package turnheel.exchange.word;

import java.io.IOException;

import org.apache.poi.xwpf.usermodel.XWPFParagraph;

import turnheel.engine.drawing.Picture;

/** Puts pictures into paragraphs. */
final class Figures {

    private Figures() {
    }

    static void write(XWPFParagraph paragraph, Picture picture) throws IOException {
        paragraph.createRun().setText(picture.description());
    }
}
