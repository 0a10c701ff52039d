package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import javax.imageio.ImageIO;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFPictureData;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTOneCellAnchor;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.drawing.OutlineDrawing;
import turnheel.engine.drawing.Picture;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class DrawingSheetTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static final double EMU_PER_MM = 36_000;
    private static final double EMU_PER_POINT = 12_700;
    private static final double MM_PER_INCH = 25.4;
    /** Width of a digit in the usual face of 11 points, of which columns are measured; more in some programs. */
    private static final double MM_PER_CHARACTER = 7 * MM_PER_INCH / 96;

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    private static List<CTOneCellAnchor> anchors(XSSFWorkbook workbook) {
        return workbook.getSheet("Drawing").getDrawingPatriarch().getCTDrawing().getOneCellAnchorList();
    }

    private static XSSFPictureData data(XSSFWorkbook workbook, CTOneCellAnchor anchor) {
        return (XSSFPictureData) workbook.getSheet("Drawing").getDrawingPatriarch()
                .getRelationById(anchor.getPic().getBlipFill().getBlip().getEmbed());
    }

    private static List<Row> rows(XSSFWorkbook workbook, String label) {
        List<Row> rows = new ArrayList<>();
        workbook.getSheet("Drawing").forEach(row -> {
            if (row.getCell(0) != null && row.getCell(0).getCellType() == CellType.STRING
                    && row.getCell(0).getStringCellValue().equals(label)) {
                rows.add(row);
            }
        });
        return rows;
    }

    @Test
    void showsTheOutlineAndAChartOfEveryPartThatHasOne() throws IOException {
        assertEquals(List.of("Quay Steps: finished measurements, all sizes", "Quay Steps: Toe, size M",
                "Quay Steps: Heel, size M"), titles(Designs.toeUp()));
        assertEquals(List.of("Tideline: finished measurements, all sizes", "Tideline: Toe, size M",
                "Tideline: Heel, size M", "Tideline: Gusset, size M"), titles(Designs.starAndFlap()));
    }

    private static List<String> titles(Design design) throws IOException {
        try (XSSFWorkbook workbook = Books.of(design)) {
            return anchors(workbook).stream().map(anchor -> anchor.getPic().getNvPicPr().getCNvPr().getTitle()).toList();
        }
    }

    @Test
    void everyPictureIsDescribedToThoseWhoCannotSeeIt() throws IOException {
        Picture outlines = OutlineDrawing.lettered(Patterns.grade(Designs.toeUp()));
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            List<String> descriptions = anchors(workbook).stream()
                    .map(anchor -> anchor.getPic().getNvPicPr().getCNvPr().getDescr()).toList();
            assertEquals(outlines.description(), descriptions.getFirst());
            assertTrue(descriptions.get(1).contains("Signs used: knit"), descriptions::toString);
            Set<Long> ids = anchors(workbook).stream().map(anchor -> anchor.getPic().getNvPicPr().getCNvPr().getId())
                    .collect(Collectors.toSet());
            assertEquals(descriptions.size(), ids.size());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void noPictureIsDistortedOrLargerThanAPageOrLiesOnCells(String name) throws IOException {
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            XSSFSheet sheet = workbook.getSheet("Drawing");
            double widthOfColumns = 0;
            for (int column = 0; column < 10; column++) {
                widthOfColumns += sheet.getColumnWidth(column) / 256.0 * MM_PER_CHARACTER;
            }
            double shrunkTo = Math.min(1, (210 - MM_PER_INCH * (sheet.getMargin(PageMargin.LEFT)
                    + sheet.getMargin(PageMargin.RIGHT))) / widthOfColumns);
            double page = 297 - MM_PER_INCH * (sheet.getMargin(PageMargin.TOP) + sheet.getMargin(PageMargin.BOTTOM));
            for (CTOneCellAnchor anchor : anchors(workbook)) {
                BufferedImage image = ImageIO.read(new ByteArrayInputStream(data(workbook, anchor).getData()));
                double width = anchor.getExt().getCx() / EMU_PER_MM;
                double height = anchor.getExt().getCy() / EMU_PER_MM;
                assertEquals(image.getWidth() / width, image.getHeight() / height, 0.05);
                assertTrue(image.getWidth() * MM_PER_INCH / width >= 149, () -> image.getWidth() + " dots on " + width);
                assertTrue(width < widthOfColumns, () -> width + " mm wide");
                assertTrue(height * shrunkTo < page - 15, () -> height + " mm high");
                double offset = Double.parseDouble(anchor.getFrom().getRowOff().toString()) / EMU_PER_POINT;
                int row = anchor.getFrom().getRow();
                double reach = offset + anchor.getExt().getCy() / EMU_PER_POINT;
                while (sheet.getRow(row).getPhysicalNumberOfCells() == 0) {
                    reach -= sheet.getRow(row).getHeightInPoints();
                    row++;
                }
                assertTrue(reach <= 0, "a picture of %s reaches row %d".formatted(name, row + 1));
            }
        }
    }

    @Test
    void figuresBelowAreThoseOfTheSock() throws IOException {
        Graded graded = Patterns.grade(Designs.toeUp());
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            Row foot = rows(workbook, "A  Foot length").getFirst();
            Row around = rows(workbook, "B  Foot, half around").getFirst();
            Row inches = foot.getSheet().getRow(foot.getRowNum() + 1);
            assertEquals("cm", foot.getCell(1).getStringCellValue());
            assertEquals("in", inches.getCell(1).getStringCellValue());
            for (int size = 0; size < graded.sizes().size(); size++) {
                double length = graded.sizes().get(size).value(Catalogue.FINISHED_LENGTH);
                assertEquals(length / 10, foot.getCell(2 + size).getNumericCellValue(), 1e-9);
                assertEquals(length / 25.4, inches.getCell(2 + size).getNumericCellValue(), 1e-9);
                assertEquals(graded.sizes().get(size).value(Catalogue.FINISHED_CIRCUMFERENCE) / 20,
                        around.getCell(2 + size).getNumericCellValue(), 1e-9);
                assertEquals(graded.sizes().get(size).value(Catalogue.HEEL_STITCHES),
                        rows(workbook, "Heel stitches").getFirst().getCell(2 + size).getNumericCellValue());
            }
        }
    }

    @Test
    void moreThanEightSizesContinueBelow() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.twelve())) {
            List<Row> heads = rows(workbook, "Measurement");
            assertEquals(2, heads.size());
            assertEquals("T8", heads.get(0).getCell(9).getStringCellValue());
            assertEquals("T9", heads.get(1).getCell(2).getStringCellValue());
            assertEquals("T12", heads.get(1).getCell(5).getStringCellValue());
            assertEquals(10, heads.get(0).getPhysicalNumberOfCells());
            assertTrue(heads.get(1).getRowNum() > rows(workbook, "A  Foot length").getFirst().getRowNum());
        }
    }

    @Test
    void aPatternWithoutItsMeasurementsSaysWhatIsMissingInPlaceOfTheDrawing() throws IOException {
        Design design = Designs.with(Designs.missing(), "Gaps", Designs.missing().sizes().subList(3, 4));
        try (XSSFWorkbook workbook = Books.of(design)) {
            String said = anchors(workbook).getFirst().getPic().getNvPicPr().getCNvPr().getDescr();
            assertTrue(said.contains("is not drawn"), said);
            assertEquals(List.of(), rows(workbook, "Measurement"));
        }
    }
}
