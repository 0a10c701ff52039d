package turnheel.exchange.workbook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFPatternFormatting;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.GaugeTable;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.KnitterRules;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.engine.term.Term;
import turnheel.engine.term.Terms;
import turnheel.engine.writing.Caution;
import turnheel.exchange.table.CellContent;
import turnheel.exchange.workbook.LiveRule.Outside;

/**
 * The part of the gauge sheet that answers: a knitter types a gauge and a foot into two cells, and reads what the
 * printed counts of each size come to and which size fits. Until then the pattern's gauge and the foot of its middle
 * size stand there.
 */
final class OwnGauge {

    private static final double MM_PER_CM = LengthUnit.CENTIMETRE.millimetres();

    private final Graded graded;
    private final CellWriter cells;
    private final double gauge;
    /** The middle one of the feet that are known, in mm. */
    private final Optional<Double> foot;
    private final Map<Key, Outside> outside = new LinkedHashMap<>();
    private int row;

    private OwnGauge(Graded graded, CellWriter cells, int row) {
        this.graded = graded;
        this.cells = cells;
        this.row = row;
        this.gauge = graded.design().stitchGauge().per100mm();
        List<Double> feet = graded.sizes().stream()
                .flatMap(size -> size.cell(Catalogue.FOOT_CIRCUMFERENCE).map(Cell::value).stream()).toList();
        this.foot = feet.isEmpty() ? Optional.empty() : Optional.of(feet.get((feet.size() - 1) / 2));
    }

    /** @return the last row that it took */
    static int write(Graded graded, CellWriter cells, int after) {
        return new OwnGauge(graded, cells, after).write();
    }

    private int write() {
        outside.put(KnitterRules.GAUGE, new Outside(CellNames.of(KnitterRules.GAUGE), gauge));
        foot.ifPresent(millimetres -> outside.put(KnitterRules.FOOT,
                // typed in centimetres, while the rules reckon in millimetres
                new Outside("(" + CellNames.of(KnitterRules.FOOT) + "*10)", millimetres)));
        row++;
        cells.group(row, GaugeSheet.FIRST_SIZE_COLUMN + graded.sizes().size() - 1, Words.text("gauges.own"));
        label("gauges.own.gauge", "gauges.unit.tenCentimetres");
        input(KnitterRules.GAUGE, Optional.of(gauge), Catalogue.GAUGE_STITCHES, 1);
        label("", "gauges.unit.fourInches");
        first(GaugeSheet.overFourInches(), Digits.TENTHS);
        label("gauges.own.foot", "gauges.unit.centimetres");
        input(KnitterRules.FOOT, foot.map(millimetres -> millimetres / MM_PER_CM), Catalogue.FOOT_CIRCUMFERENCE,
                MM_PER_CM);
        label("", "gauges.unit.inches");
        first(in(LengthUnit.INCH, new Term.Reference(KnitterRules.FOOT)), Digits.HUNDREDTHS);
        label("gauges.own.knit", "gauges.unit.size");
        int answer = row;
        label("gauges.own.stitches", "gauges.unit.stitches");
        each(Catalogue.FOOT_STITCHES.term(), Digits.ALL);
        lengths("gauges.own.circumference", KnitterRules.CIRCUMFERENCE);
        lengths("gauges.own.fits", KnitterRules.FITS);
        label("gauges.own.ease", "gauges.unit.percent");
        each(KnitterRules.EASE, Digits.TENTHS);
        warnOfTightness();
        label("gauges.own.off", "gauges.unit.centimetres");
        each(in(LengthUnit.CENTIMETRE, KnitterRules.OFF), Digits.TENTHS);
        answer(answer, row);
        return row;
    }

    private void label(String label, String unit) {
        row++;
        CellContent text = label.isEmpty() ? new CellContent.Empty() : new CellContent.Text(Words.text(label));
        cells.put(row, GaugeSheet.LABEL_COLUMN, text, Look.LABEL, Digits.ALL);
        cells.put(row, GaugeSheet.UNIT_COLUMN, Words.text(unit), Look.KEY);
    }

    /** A cell to type into, with its name and its range. */
    private void input(Key key, Optional<Double> value, Parameter like, double millimetresPerUnit) {
        int column = GaugeSheet.FIRST_SIZE_COLUMN;
        cells.put(row, column, value.<CellContent>map(CellContent.Figure::new).orElseGet(CellContent.Empty::new),
                Look.ENTERED, Digits.TENTHS);
        CellNames.define(cells.sheet(), key, row, column);
        double least = like.least() / millimetresPerUnit;
        double most = like.most() / millimetresPerUnit;
        XSSFDataValidationHelper helper = new XSSFDataValidationHelper(cells.sheet());
        DataValidation validation = helper.createValidation(helper.createDecimalConstraint(OperatorType.BETWEEN,
                Double.toString(least), Double.toString(most)), new CellRangeAddressList(row, row, column, column));
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(false);
        validation.createErrorBox(like.label(), Words.text("gauges.range", like.label(), Notation.number(least),
                Notation.number(most)));
        cells.sheet().addValidationData(validation);
    }

    /** Marks what is so tight that a caution goes with it, whatever was typed. */
    private void warnOfTightness() {
        XSSFSheetConditionalFormatting formats = cells.sheet().getSheetConditionalFormatting();
        XSSFConditionalFormattingRule tight = formats.createConditionalFormattingRule(ComparisonOperator.LT,
                Notation.formula(Terms.number(Caution.TIGHT_PERCENT), Key::name));
        XSSFPatternFormatting ground = tight.createPatternFormatting();
        ground.setFillBackgroundColor(new XSSFColor(Look.WARNING.ground().rgb()));
        ground.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
        tight.createFontFormatting().setFontStyle(Look.WARNING.isItalic(), Look.WARNING.isBold());
        formats.addConditionalFormatting(new CellRangeAddress[] {new CellRangeAddress(row, row,
                GaugeSheet.FIRST_SIZE_COLUMN, GaugeSheet.FIRST_SIZE_COLUMN + graded.sizes().size() - 1)}, tight);
    }

    private void lengths(String label, Term millimetres) {
        label(label, "gauges.unit.centimetres");
        each(in(LengthUnit.CENTIMETRE, millimetres), Digits.TENTHS);
        label("", "gauges.unit.inches");
        each(in(LengthUnit.INCH, millimetres), Digits.HUNDREDTHS);
    }

    private static Term in(LengthUnit unit, Term millimetres) {
        return Terms.dividedBy(millimetres, Terms.number(unit.millimetres()));
    }

    private void first(Term rule, Digits digits) {
        cells.put(row, GaugeSheet.FIRST_SIZE_COLUMN, LiveRule.of(rule, graded.sizes().getFirst(), 0, outside),
                Look.COMPUTED, digits);
    }

    private void each(Term rule, Digits digits) {
        for (int size = 0; size < graded.sizes().size(); size++) {
            cells.put(row, GaugeSheet.FIRST_SIZE_COLUMN + size,
                    LiveRule.of(rule, graded.sizes().get(size), size, outside), Look.COMPUTED, digits);
        }
    }

    /** The label over the least of the distances; of two as near the first. */
    private void answer(int answerRow, int distances) {
        Optional<String> closest = foot.flatMap(millimetres -> GaugeTable.closest(graded, gauge, millimetres))
                .map(GaugeTable.Closest::size);
        String off = range(distances);
        CellContent content = closest.<CellContent>map(label -> new CellContent.TextFormula(
                "INDEX(%s,MATCH(MIN(%s),%s,0))".formatted(range(GaugeSheet.HEAD_ROW), off, off), label))
                .orElseGet(CellContent.Empty::new);
        cells.put(answerRow, GaugeSheet.FIRST_SIZE_COLUMN, content, Look.CHOSEN, Digits.ALL);
    }

    private String range(int rowOfSizes) {
        return new CellReference(rowOfSizes, GaugeSheet.FIRST_SIZE_COLUMN, true, true).formatAsString() + ":"
                + new CellReference(rowOfSizes, GaugeSheet.FIRST_SIZE_COLUMN + graded.sizes().size() - 1, true, true)
                        .formatAsString();
    }
}
