package turnheel.benchmarks;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook as a list of what stands in it, to be written again by POI alone: the same texts, numbers, formulas with
 * their results, styles, comments, names, validations, widths and heights, and nothing that decides about them.
 */
final class RawWorkbook {

    private final List<Sheet> sheets = new ArrayList<>();
    private final List<Name> names = new ArrayList<>();
    private final XSSFWorkbook styles;

    private record Name(String name, String formula) {
    }

    private record Content(int column, CellType type, String text, double number, int style, Optional<Note> note) {
    }

    private record Note(String text, ClientAnchor anchor) {
    }

    private record Row(int number, short height, boolean hasHeight, List<Content> cells) {
    }

    private record Sheet(String name, List<Row> rows, List<Integer> widths, List<CellRangeAddress> merged,
            List<XSSFDataValidation> validations) {
    }

    private RawWorkbook(XSSFWorkbook model) {
        styles = model;
        for (int i = 0; i < model.getNumberOfSheets(); i++) {
            sheets.add(sheet(model.getSheetAt(i)));
        }
        for (XSSFName name : model.getAllNames()) {
            if (!name.getNameName().startsWith("_xlnm")) {
                names.add(new Name(name.getNameName(), name.getRefersToFormula()));
            }
        }
    }

    static RawWorkbook of(byte[] workbook) throws IOException {
        // stays open: its styles are copied from
        return new RawWorkbook(new XSSFWorkbook(new ByteArrayInputStream(workbook)));
    }

    private static Sheet sheet(XSSFSheet sheet) {
        List<Row> rows = new ArrayList<>();
        int columns = 0;
        for (org.apache.poi.ss.usermodel.Row each : sheet) {
            XSSFRow row = (XSSFRow) each;
            List<Content> cells = new ArrayList<>();
            row.forEach(cell -> cells.add(content((XSSFCell) cell)));
            rows.add(new Row(row.getRowNum(), row.getHeight(), row.getCTRow().isSetCustomHeight(), cells));
            columns = Math.max(columns, row.getLastCellNum());
        }
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < columns; column++) {
            widths.add(sheet.getColumnWidth(column));
        }
        return new Sheet(sheet.getSheetName(), rows, widths, sheet.getMergedRegions(), sheet.getDataValidations());
    }

    private static Content content(XSSFCell cell) {
        XSSFComment comment = cell.getCellComment();
        Optional<Note> note = comment == null ? Optional.empty()
                : Optional.of(new Note(comment.getString().getString(), comment.getClientAnchor()));
        return switch (cell.getCellType()) {
            case STRING -> new Content(cell.getColumnIndex(), CellType.STRING, cell.getStringCellValue(), 0,
                    cell.getCellStyle().getIndex(), note);
            case NUMERIC -> new Content(cell.getColumnIndex(), CellType.NUMERIC, "", cell.getNumericCellValue(),
                    cell.getCellStyle().getIndex(), note);
            case FORMULA -> new Content(cell.getColumnIndex(), CellType.FORMULA, cell.getCellFormula(),
                    cell.getCachedFormulaResultType() == CellType.NUMERIC ? cell.getNumericCellValue() : 0,
                    cell.getCellStyle().getIndex(), note);
            default -> new Content(cell.getColumnIndex(), CellType.BLANK, "", 0, cell.getCellStyle().getIndex(), note);
        };
    }

    /** Writes it with POI as it comes. Formulas are not parsed, which spares POI a check that it makes otherwise. */
    void write(OutputStream out) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            workbook.setCellFormulaValidation(false);
            List<XSSFCellStyle> copies = new ArrayList<>();
            for (int style = 0; style < styles.getNumCellStyles(); style++) {
                XSSFCellStyle copy = workbook.createCellStyle();
                copy.cloneStyleFrom(styles.getCellStyleAt(style));
                copies.add(copy);
            }
            for (Sheet each : sheets) {
                write(each, workbook.createSheet(each.name()), copies);
            }
            for (Name each : names) {
                XSSFName name = workbook.createName();
                name.setNameName(each.name());
                name.setRefersToFormula(each.formula());
            }
            workbook.write(out);
        }
    }

    private static void write(Sheet content, XSSFSheet sheet, List<XSSFCellStyle> styles) {
        for (Row each : content.rows()) {
            XSSFRow row = sheet.createRow(each.number());
            if (each.hasHeight()) {
                row.setHeight(each.height());
            }
            each.cells().forEach(cell -> write(cell, row, styles));
        }
        for (int column = 0; column < content.widths().size(); column++) {
            sheet.setColumnWidth(column, content.widths().get(column));
        }
        content.merged().forEach(sheet::addMergedRegion);
        content.validations().forEach(sheet::addValidationData);
    }

    private static void write(Content content, XSSFRow row, List<XSSFCellStyle> styles) {
        XSSFCell cell = row.createCell(content.column());
        cell.setCellStyle(styles.get(content.style()));
        switch (content.type()) {
            case STRING -> cell.setCellValue(content.text());
            case NUMERIC -> cell.setCellValue(content.number());
            case FORMULA -> {
                cell.setCellFormula(content.text());
                cell.setCellValue(content.number());
            }
            default -> cell.setBlank();
        }
        content.note().ifPresent(note -> {
            XSSFDrawing drawing = row.getSheet().createDrawingPatriarch();
            ClientAnchor of = note.anchor();
            XSSFComment comment = drawing.createCellComment(new XSSFClientAnchor(0, 0, 0, 0, of.getCol1(), of.getRow1(),
                    of.getCol2(), of.getRow2()));
            comment.setString(note.text());
            cell.setCellComment(comment);
        });
    }
}
