package turnheel.exchange.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTMarker;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTOneCellAnchor;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTPicture;

import turnheel.engine.drawing.Picture;
import turnheel.exchange.drawing.PngWriter;
import turnheel.exchange.office.OneLine;

/**
 * Puts pictures on a sheet. Each hangs on one cell and has a size of its own: hung between two cells it would be as wide
 * as the columns, which every program measures by another font.
 */
final class SheetPictures {

    /** Dense enough for print, and quick to make. */
    private static final double DOTS_PER_INCH = 150;
    /** Nobody listens to more; the whole title stands on every sheet. */
    private static final int LONGEST_TITLE = 200;
    private static final double EMU_PER_MM = Units.EMU_PER_CENTIMETER / 10.0;

    private final XSSFSheet sheet;
    private final PngWriter writer = new PngWriter();

    SheetPictures(XSSFSheet sheet) {
        this.sheet = sheet;
    }

    /**
     * Hangs a picture on the first cell of a row, with its title and description as alternative text.
     *
     * @param scale millimetres of paper for a millimetre of the picture
     */
    void put(Picture picture, double scale, int row) {
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        XSSFPicture made = drawing.createPicture(new XSSFClientAnchor(0, 0, 0, 0, 0, row, 1, row + 1),
                sheet.getWorkbook().addPicture(bytes(picture, scale), Workbook.PICTURE_TYPE_PNG));
        CTOneCellAnchor anchor = drawing.getCTDrawing().addNewOneCellAnchor();
        CTMarker corner = anchor.addNewFrom();
        corner.setCol(0);
        corner.setColOff(0);
        corner.setRow(row);
        // off the line under the heading
        corner.setRowOff(Math.round(EMU_PER_MM));
        long width = Math.round(picture.width() * scale * EMU_PER_MM);
        long height = Math.round(picture.height() * scale * EMU_PER_MM);
        anchor.addNewExt().setCx(width);
        anchor.getExt().setCy(height);
        CTPicture hung = anchor.addNewPic();
        hung.set(made.getCTPicture());
        anchor.addNewClientData();
        drawing.getCTDrawing().removeTwoCellAnchor(drawing.getCTDrawing().sizeOfTwoCellAnchorArray() - 1);
        hung.getSpPr().getXfrm().getExt().setCx(width);
        hung.getSpPr().getXfrm().getExt().setCy(height);
        CTNonVisualDrawingProps about = hung.getNvPicPr().getCNvPr();
        about.setName(title(picture));
        about.setTitle(title(picture));
        about.setDescr(OneLine.of(picture.description()));
    }

    private static String title(Picture picture) {
        String title = OneLine.of(picture.title());
        return title.length() <= LONGEST_TITLE ? title : title.substring(0, LONGEST_TITLE - 1) + "…";
    }

    private byte[] bytes(Picture picture, double scale) {
        try {
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            writer.write(picture, scale, DOTS_PER_INCH, file);
            return file.toByteArray();
        } catch (IOException impossible) {
            // It is written to memory.
            throw new UncheckedIOException(impossible);
        }
    }
}
