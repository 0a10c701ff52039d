package turnheel.exchange.workbook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.Unit;
import turnheel.engine.drawing.ChartedPart;
import turnheel.engine.drawing.OutlineDrawing;
import turnheel.engine.drawing.OutlineFigures;
import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.StitchChart;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.exchange.table.CellContent;

/**
 * The outlines of all sizes and a chart of each part in a middle size, as pictures, each with its figures in every size
 * below it. Figures are values here, since a picture cannot follow what somebody types on the Counts sheet, and the two
 * must not disagree.
 */
final class DrawingSheet {

    static final String NAME = Words.text("drawing.sheet");
    static final int LABEL_COLUMN = 0;
    static final int UNIT_COLUMN = 1;
    static final int FIRST_SIZE_COLUMN = 2;
    /** More sizes continue in a table below, so that the sheet is as wide as a page however many there are. */
    static final int SIZES_PER_TABLE = 8;

    private static final int LAST_COLUMN = FIRST_SIZE_COLUMN + SIZES_PER_TABLE - 1;
    private static final int LABEL_CHARACTERS = 28;
    private static final int UNIT_CHARACTERS = 8;
    private static final int FIGURE_CHARACTERS = 9;
    private static final int CHARACTERS_PER_LINE = 64;
    /** The columns are a little wider than the page, which then shrinks to about nine tenths. */
    private static final double WIDEST_MM = 190;
    /** What a page takes below the title and a heading, at nine tenths. */
    private static final double HIGHEST_MM = 245;
    private static final float ROW_POINTS = 15;
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final List<Parameter> OF_GUSSETS = List.of(Catalogue.HEEL_PICK_UP, Catalogue.HEEL_AFTER_PICK_UP,
            Catalogue.HEEL_GUSSET_DECREASES, Catalogue.HEEL_GUSSET_INCREASES, Catalogue.HEEL_WIDEST);
    private static final List<Parameter> OF_INSTEP_PATTERNS = List.of(Catalogue.FOOT_INSTEP, Catalogue.FOOT_REPEATS,
            Catalogue.FOOT_PANEL, Catalogue.FOOT_FILLER, Catalogue.FOOT_PATTERN_FIRST_ROW,
            Catalogue.FOOT_PATTERN_LAST_ROW);
    private static final List<Parameter> OF_LEG_PATTERNS = List.of(Catalogue.LEG_STITCHES, Catalogue.LEG_REPEATS,
            Catalogue.LEG_PATTERN_FIRST_ROW, Catalogue.LEG_PATTERN_LAST_ROW);

    private final Graded graded;
    private final CellWriter cells;
    private final SheetPictures pictures;
    private int row = 1;

    private DrawingSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
        this.pictures = new SheetPictures(cells.sheet());
    }

    static void write(Graded graded, CellWriter cells) {
        new DrawingSheet(graded, cells).write();
    }

    private void write() {
        cells.title(LAST_COLUMN, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(row, 0, Words.text("drawing.note"), Look.NOTE);
        outline();
        for (ChartedPart part : ChartedPart.values()) {
            middle(part).ifPresent(size -> chart(part, size));
        }
        layout();
    }

    private void outline() {
        row++;
        group(Words.text("drawing.outline"));
        picture(OutlineDrawing.lettered(graded));
        OutlineFigures figures = OutlineFigures.of(graded);
        if (figures.sizes().isEmpty()) {
            return;
        }
        group(Words.text("drawing.figures"));
        for (List<Integer> some : tables(figures.sizes().size())) {
            head("measurement", some.stream().map(figures.sizes()::get).toList());
            for (OutlineFigures.Row measure : figures.rows()) {
                String label = measure.letter().isEmpty() ? measure.label() : measure.letter() + "  " + measure.label();
                length(label, some.stream().map(measure.mm()::get).toList());
            }
        }
    }

    /** The size in the middle of those that have a chart. */
    private Optional<GradedSize> middle(ChartedPart part) {
        List<GradedSize> charted = graded.sizes().stream().filter(size -> part.chart(graded, size).isPresent()).toList();
        return charted.isEmpty() ? Optional.empty() : Optional.of(charted.get((charted.size() - 1) / 2));
    }

    private void chart(ChartedPart part, GradedSize size) {
        cells.sheet().setRowBreak(row);
        group(Words.text("drawing.chart", part.label(), size.label()));
        picture(StitchChart.of(graded, part, size.label()));
        group(Words.text("drawing.numbers", part.label()));
        for (List<Integer> some : tables(graded.sizes().size())) {
            head("label", some.stream().map(index -> graded.sizes().get(index).label()).toList());
            graded.parameters().stream().filter(parameter -> isOf(part, parameter))
                    .forEach(parameter -> number(parameter, some));
        }
    }

    private static boolean isOf(ChartedPart part, Parameter parameter) {
        return switch (part) {
            case TOE -> parameter.part() == Part.TOE;
            case HEEL -> parameter.part() == Part.HEEL;
            case GUSSET -> OF_GUSSETS.contains(parameter);
            case INSTEP_PATTERN -> OF_INSTEP_PATTERNS.contains(parameter);
            case LEG_PATTERN -> OF_LEG_PATTERNS.contains(parameter);
        };
    }

    /** Positions of the sizes that stand side by side in each table. */
    private static List<List<Integer>> tables(int sizes) {
        return IntStream.iterate(0, first -> first < sizes, first -> first + SIZES_PER_TABLE)
                .mapToObj(first -> IntStream.range(first, Math.min(sizes, first + SIZES_PER_TABLE)).boxed().toList())
                .toList();
    }

    private void group(String heading) {
        row++;
        cells.put(row, LABEL_COLUMN, heading, Look.GROUP);
        for (int column = LABEL_COLUMN + 1; column <= LAST_COLUMN; column++) {
            cells.put(row, column, new CellContent.Empty(), Look.GROUP, Digits.ALL);
        }
    }

    /** A picture on rows that are as high as it is, and one more. */
    private void picture(Picture picture) {
        double scale = Math.min(1, Math.min(WIDEST_MM / picture.width(), HIGHEST_MM / picture.height()));
        row++;
        pictures.put(picture, scale, row);
        int rows = 1 + (int) Math.ceil(picture.height() * scale / (ROW_POINTS * MM_PER_POINT));
        for (int below = 0; below < rows; below++) {
            cells.high(row + below, ROW_POINTS);
        }
        row += rows - 1;
    }

    private void head(String what, List<String> labels) {
        row++;
        cells.put(row, LABEL_COLUMN, Words.text("column." + what), Look.HEAD);
        cells.put(row, UNIT_COLUMN, Words.text("column.unit"), Look.HEAD);
        for (int column = FIRST_SIZE_COLUMN; column <= LAST_COLUMN; column++) {
            int size = column - FIRST_SIZE_COLUMN;
            put(column, size < labels.size() ? labels.get(size) : "", Look.HEAD_OF_NUMBERS);
        }
    }

    private void number(Parameter parameter, List<Integer> sizes) {
        List<OptionalDouble> values = sizes.stream().map(graded.sizes()::get).map(size -> size.cell(parameter))
                .map(cell -> cell.isPresent() ? OptionalDouble.of(cell.get().value()) : OptionalDouble.empty()).toList();
        if (parameter.unit() == Unit.MILLIMETRES) {
            length(parameter.label(), values);
        } else {
            line(parameter.label(), parameter.unit().symbol(), values, 1, Digits.of(parameter.unit()));
        }
    }

    private void length(String label, List<OptionalDouble> mm) {
        line(label, LengthUnit.CENTIMETRE.symbol(), mm, LengthUnit.CENTIMETRE.millimetres(), Digits.TENTHS);
        line("", LengthUnit.INCH.symbol(), mm, LengthUnit.INCH.millimetres(), Digits.HUNDREDTHS);
    }

    private void line(String label, String unit, List<OptionalDouble> values, double divisor, Digits digits) {
        row++;
        put(LABEL_COLUMN, label, Look.LABEL);
        cells.put(row, UNIT_COLUMN, unit, Look.KEY);
        for (int size = 0; size < values.size(); size++) {
            OptionalDouble value = values.get(size);
            CellContent content = value.isPresent() ? new CellContent.Figure(value.getAsDouble() / divisor)
                    : new CellContent.Empty();
            cells.put(row, FIRST_SIZE_COLUMN + size, content, Look.COMPUTED, digits);
        }
    }

    /** A text, or a cell that has none but looks alike. */
    private void put(int column, String text, Look look) {
        cells.put(row, column, text.isEmpty() ? new CellContent.Empty() : new CellContent.Text(text), look, Digits.ALL);
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        cells.fit(LABEL_COLUMN, LABEL_CHARACTERS, LABEL_CHARACTERS);
        cells.fit(UNIT_COLUMN, UNIT_CHARACTERS, UNIT_CHARACTERS);
        for (int column = FIRST_SIZE_COLUMN; column <= LAST_COLUMN; column++) {
            cells.fit(column, FIGURE_CHARACTERS, FIGURE_CHARACTERS);
        }
        sheet.createFreezePane(0, 1);
        sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
        PrintLayout.upright(sheet, PatternSheet.title(graded));
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, LAST_COLUMN, 0, row);
    }
}
