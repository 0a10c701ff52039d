package turnheel.exchange.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.design.Gauge;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.grading.GaugeTable;
import turnheel.engine.grading.GaugeTable.AtGauge;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.KnitterRules;
import turnheel.engine.grading.SizeFit;
import turnheel.engine.term.Key;
import turnheel.engine.term.Term;
import turnheel.engine.term.Terms;
import turnheel.engine.writing.Caution;
import turnheel.exchange.table.CellContent;
import turnheel.exchange.workbook.LiveRule.Outside;

/**
 * For a knitter whose gauge is not the printed one. First what follows from a gauge and a foot that are typed in
 * ({@link OwnGauge}); then tables over gauge and size: the counts that the pattern would have, which the solver chose
 * and which are values; what the printed counts come to, live; and whose printed counts to knit for whose foot.
 */
final class GaugeSheet {

    static final String NAME = Words.text("gauges.sheet");
    static final int LABEL_COLUMN = 0;
    static final int UNIT_COLUMN = 1;
    static final int FIRST_SIZE_COLUMN = 2;
    static final int HEAD_ROW = 2;

    private static final int CHARACTERS_PER_LINE = 80;
    /** Room for a label with an ease, as in {@code 38/39 (−10 %)}. */
    private static final int SIZE_CHARACTERS = 12;
    private static final double FOUR_INCHES = 4 * LengthUnit.INCH.millimetres() / Gauge.SPAN_MM;
    private static final Term OVER_FOUR_INCHES =
            Terms.times(new Term.Reference(KnitterRules.GAUGE), Terms.number(FOUR_INCHES));

    private final Graded graded;
    private final CellWriter cells;
    private final GaugeTable table;
    private final LengthUnit unit;
    private final int lastColumn;
    private int row = HEAD_ROW;

    private GaugeSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
        this.table = GaugeTable.of(graded);
        // whoever measures the swatch in inches measures feet in inches
        this.unit = graded.design().stitchGauge().over().unit() == LengthUnit.INCH ? LengthUnit.INCH
                : LengthUnit.CENTIMETRE;
        this.lastColumn = FIRST_SIZE_COLUMN + graded.sizes().size() - 1;
    }

    static void write(Graded graded, CellWriter cells) {
        new GaugeSheet(graded, cells).write();
    }

    private void write() {
        cells.title(lastColumn, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(1, 0, Words.text("gauges.note"), Look.NOTE);
        cells.put(HEAD_ROW, LABEL_COLUMN, Words.text("column.gauge"), Look.HEAD_OF_NUMBERS);
        cells.put(HEAD_ROW, UNIT_COLUMN, Words.text("column.fourInches"), Look.HEAD_OF_NUMBERS);
        for (int size = 0; size < graded.sizes().size(); size++) {
            cells.put(HEAD_ROW, FIRST_SIZE_COLUMN + size, graded.sizes().get(size).label(), Look.HEAD_OF_NUMBERS);
        }
        row = OwnGauge.write(graded, cells, row);
        table("counts", "", AtGauge::regraded, GaugeSheet::count);
        cells.sheet().setRowBreak(row);
        lengths("circumference", KnitterRules.CIRCUMFERENCE);
        lengths("fits", KnitterRules.FITS);
        cells.sheet().setRowBreak(row);
        table("closest", "", AtGauge::closest, GaugeSheet::closest);
        layout();
    }

    /** A table of what the engine chose. */
    private <T> void table(String name, String unitSymbol, Function<AtGauge, Optional<T>> chosen,
            Function<T, CellContent> content) {
        group(name, unitSymbol);
        for (GaugeTable.Row gauge : table.rows()) {
            gauge(gauge);
            for (int size = 0; size < gauge.sizes().size(); size++) {
                CellContent cell = chosen.apply(gauge.sizes().get(size)).map(content)
                        .orElseGet(() -> new CellContent.Text(Words.text("gauges.none")));
                put(size, cell, gauge, Digits.ALL);
            }
        }
    }

    private static CellContent count(SizeFit fit) {
        return new CellContent.Figure(fit.count());
    }

    private static CellContent closest(GaugeTable.Closest closest) {
        // a true minus sign, as everywhere in print
        String ease = Long.toString(Math.round(closest.easePercent())).replace('-', '−');
        return new CellContent.Text(Words.text(Caution.isTight(closest.easePercent()) ? "gauges.closest.tight"
                : "gauges.closest.cell", closest.size(), ease));
    }

    /** A table of a length that follows from the gauge in its first column. */
    private void lengths(String name, Term millimetres) {
        group(name, unit.symbol());
        Term length = Terms.dividedBy(millimetres, Terms.number(unit.millimetres()));
        Digits digits = unit == LengthUnit.INCH ? Digits.HUNDREDTHS : Digits.TENTHS;
        for (GaugeTable.Row gauge : table.rows()) {
            gauge(gauge);
            for (int size = 0; size < graded.sizes().size(); size++) {
                put(size, LiveRule.of(length, graded.sizes().get(size), size, gaugeCell(gauge)), gauge, digits);
            }
        }
    }

    private void put(int size, CellContent content, GaugeTable.Row gauge, Digits digits) {
        cells.put(row, FIRST_SIZE_COLUMN + size, content, gauge.isPrinted() ? Look.REFERENCE : Look.COMPUTED, digits);
    }

    private void group(String name, String unitSymbol) {
        row += 2;
        cells.group(row, lastColumn, Words.text("gauges." + name, unitSymbol));
    }

    private void gauge(GaugeTable.Row gauge) {
        row++;
        Look look = gauge.isPrinted() ? Look.REFERENCE : Look.COMPUTED;
        cells.put(row, LABEL_COLUMN, new CellContent.Figure(gauge.stitches()), look, Digits.TENTHS);
        // of any size, since it reads none
        GradedSize first = graded.sizes().getFirst();
        cells.put(row, UNIT_COLUMN, LiveRule.of(OVER_FOUR_INCHES, first, 0, gaugeCell(gauge)), look, Digits.TENTHS);
    }

    private Map<Key, Outside> gaugeCell(GaugeTable.Row gauge) {
        String address = new CellReference(row, LABEL_COLUMN, false, true).formatAsString();
        return Map.of(KnitterRules.GAUGE, new Outside(address, gauge.stitches()));
    }

    static Term overFourInches() {
        return OVER_FOUR_INCHES;
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        cells.fit(LABEL_COLUMN, 20, 34);
        cells.fit(UNIT_COLUMN, 12, 20);
        List<Integer> labels = graded.sizes().stream().map(size -> size.label().length()).toList();
        for (int size = 0; size < labels.size(); size++) {
            cells.fit(FIRST_SIZE_COLUMN + size, Math.min(SIZE_CHARACTERS + labels.get(size), 18), 18);
        }
        sheet.createFreezePane(FIRST_SIZE_COLUMN, HEAD_ROW + 1);
        sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
        sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, LABEL_COLUMN, UNIT_COLUMN));
        PrintLayout.table(sheet, PatternSheet.title(graded), graded.sizes().size());
        // columns are wide here, and each table is low
        sheet.getPrintSetup().setLandscape(true);
    }
}
