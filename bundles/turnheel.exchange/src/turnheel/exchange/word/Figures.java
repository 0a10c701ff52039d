package turnheel.exchange.word;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.poi.common.usermodel.PictureType;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.util.Units;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;

import turnheel.engine.drawing.Picture;
import turnheel.exchange.drawing.PngWriter;
import turnheel.exchange.office.OneLine;

/** Puts the pictures of one file into its paragraphs, as large as they are where the page has room. */
final class Figures {

    private static final double DOTS_PER_INCH = 192;
    private static final int EMU_PER_MM = Units.EMU_PER_CENTIMETER / 10;

    private final PngWriter painter = new PngWriter();

    /** A picture with its title and its description for those who cannot see it. */
    void write(XWPFParagraph paragraph, Picture picture) throws IOException {
        double scale = Page.scale(picture.width(), picture.height());
        ByteArrayOutputStream dots = new ByteArrayOutputStream();
        painter.write(picture, scale, DOTS_PER_INCH, dots);
        XWPFRun run = paragraph.createRun();
        try {
            run.addPicture(new ByteArrayInputStream(dots.toByteArray()), PictureType.PNG, "",
                    emu(scale * picture.width()), emu(scale * picture.height()));
        } catch (InvalidFormatException impossible) {
            throw new IllegalStateException("the library refuses a name that it made itself", impossible);
        }
        describe(run.getCTR().getDrawingArray(0).getInlineArray(0).getDocPr(), picture);
        describe(run.getEmbeddedPictures().getFirst().getCTPicture().getNvPicPr().getCNvPr(), picture);
    }

    private static void describe(CTNonVisualDrawingProps properties, Picture picture) {
        properties.setTitle(OneLine.of(picture.title()));
        properties.setDescr(OneLine.of(picture.description()));
    }

    private static int emu(double mm) {
        return (int) Math.round(mm * EMU_PER_MM);
    }
}
