package turnheel.exchange.workbook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Length;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.YarnLine;
import turnheel.engine.design.YarnRows;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.YarnPlan;
import turnheel.engine.term.Key;
import turnheel.engine.term.Term;
import turnheel.engine.term.Terms;
import turnheel.engine.yarn.Needles;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.imprint.MaterialWords;
import turnheel.exchange.table.CellContent;
import turnheel.exchange.workbook.LiveRule.Outside;

/**
 * What to buy and where it goes: metres, grams and balls of each yarn per size, what each part takes of it, needles,
 * and what else is needed. Numbers follow the Counts sheet; the loops of a part stand there only where the pattern has
 * several yarns, else they are counted here and written into the formula.
 */
final class YarnSheet {

    static final String NAME = Words.text("yarn.sheet");
    static final int LABEL_COLUMN = 0;
    static final int UNIT_COLUMN = 1;
    static final int FIRST_SIZE_COLUMN = 2;

    private static final int HEAD_ROW = 2;
    private static final int CHARACTERS_PER_LINE = 80;
    private static final int LABEL_CHARACTERS = 34;
    private static final int UNIT_CHARACTERS = 8;
    private static final int SIZE_CHARACTERS = 10;

    private final Graded graded;
    private final CellWriter cells;
    private final Materials materials;
    private final YarnPlan plan;
    private final int lastColumn;
    private int row = HEAD_ROW;

    private YarnSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
        this.materials = graded.design().materials();
        this.plan = YarnPlan.of(graded.design());
        this.lastColumn = FIRST_SIZE_COLUMN + graded.sizes().size() - 1;
    }

    static void write(Graded graded, CellWriter cells) {
        new YarnSheet(graded, cells).write();
    }

    private void write() {
        cells.title(lastColumn, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(1, 0, Words.text(materials.yarns().isEmpty() ? "yarn.note.undecided" : "yarn.note"), Look.NOTE);
        cells.put(HEAD_ROW, LABEL_COLUMN, Words.text("column.label"), Look.HEAD);
        cells.put(HEAD_ROW, UNIT_COLUMN, Words.text("column.unit"), Look.HEAD);
        for (int size = 0; size < graded.sizes().size(); size++) {
            cells.put(HEAD_ROW, FIRST_SIZE_COLUMN + size, graded.sizes().get(size).label(), Look.HEAD_OF_NUMBERS);
        }
        pair();
        parts();
        needles();
        notions();
        layout();
    }

    private void group(String heading) {
        row++;
        cells.group(row, lastColumn, heading);
    }

    private void pair() {
        group(Words.text("yarn.pair", Long.toString(Math.round(materials.margin().percent()))));
        rows(List.of(Catalogue.YARN_METRES, Catalogue.YARN_GRAMS, Catalogue.YARN_BALLS));
        if (plan.yarns() == 1) {
            materials.yarns().stream().findFirst().ifPresent(yarn -> stated(yarn, Catalogue.YARN_BALLS));
            return;
        }
        for (int yarn = 1; yarn <= plan.yarns(); yarn++) {
            YarnRows rows = Catalogue.YARN_COLOURS.get(yarn - 1);
            YarnLine line = materials.yarns().get(yarn - 1);
            group(Words.text("yarn.numbered", Integer.toString(yarn), MaterialWords.yarn(line)));
            rows(List.of(rows.metres(), rows.grams(), rows.balls()));
            stated(line, rows.balls());
        }
    }

    private void rows(List<Parameter> parameters) {
        parameters.stream().filter(graded.parameters()::contains).forEach(parameter ->
                rule(parameter.label(), parameter.unit().symbol(), parameter.term(), Digits.of(parameter.unit())));
    }

    /** What the pattern asks for, and what then is left over or missing. */
    private void stated(YarnLine line, Parameter needed) {
        line.balls().ifPresent(balls -> {
            Term stated = Terms.number(balls);
            rule(Words.text("yarn.stated"), needed.unit().symbol(), stated, Digits.ALL);
            rule(Words.text("yarn.spare"), needed.unit().symbol(), Terms.minus(stated, needed.term()), Digits.ALL);
        });
    }

    private void parts() {
        group(Words.text("yarn.parts"));
        for (int yarn = 1; yarn <= plan.yarns(); yarn++) {
            for (Part part : Part.values()) {
                if (YarnPlan.isKnitted(part)) {
                    int number = yarn;
                    plan.metres(part, yarn)
                            .ifPresent(metres -> metres(Words.text("part." + part.name()), number, metres));
                }
            }
            metres(Words.text("yarn.ends"), yarn, plan.metresOfEnds(yarn));
        }
        rows(List.of(Catalogue.YARN_SOCK_METRES, Catalogue.YARN_SOCK_GRAMS, Catalogue.YARN_LOOP_LENGTH));
    }

    private void metres(String label, int yarn, Term metres) {
        String whole = plan.yarns() == 1 ? label : Words.text("yarn.ofPart", label, Integer.toString(yarn));
        rule(whole, Catalogue.YARN_METRES.unit().symbol(), metres, Digits.TENTHS);
    }

    private void rule(String label, String unit, Term rule, Digits digits) {
        row++;
        cells.put(row, LABEL_COLUMN, label, Look.LABEL);
        cells.put(row, UNIT_COLUMN, unit, Look.KEY);
        for (int size = 0; size < graded.sizes().size(); size++) {
            GradedSize gradedSize = graded.sizes().get(size);
            CellContent content = rule.keys().isEmpty() ? new CellContent.Figure(rule.evaluate(none -> Double.NaN))
                    : LiveRule.of(rule, gradedSize, size, counted(rule, gradedSize));
            cells.put(row, FIRST_SIZE_COLUMN + size, content, Look.COMPUTED, digits);
        }
    }

    /** The loops of parts that are no rows of the pattern. */
    private Map<Key, Outside> counted(Term rule, GradedSize size) {
        Map<Key, Outside> counted = new LinkedHashMap<>();
        if (rule.keys().stream().allMatch(key -> size.cell(key).isPresent())) {
            return counted;
        }
        Patterns.loopsOfParts(graded, size).forEach((key, loops) -> {
            if (size.cell(key).isEmpty()) {
                counted.put(key, new Outside(new BigDecimal(Double.toString(loops)).toPlainString(), loops));
            }
        });
        return counted;
    }

    private void needles() {
        List<Optional<Length>> needles = graded.sizes().stream()
                .map(size -> size.cell(Catalogue.NEEDLE).map(Cell::value).map(Length::ofMm)).toList();
        if (needles.stream().allMatch(Optional::isEmpty)) {
            return;
        }
        group(Words.text("yarn.needles"));
        // needles come in steps of a quarter of a millimetre
        rule(Catalogue.NEEDLE.label(), Catalogue.NEEDLE.unit().symbol(), Catalogue.NEEDLE.term(), Digits.HUNDREDTHS);
        row++;
        cells.put(row, LABEL_COLUMN, Words.text("yarn.needles.us"), Look.LABEL);
        cells.put(row, UNIT_COLUMN, "", Look.KEY);
        for (int size = 0; size < needles.size(); size++) {
            CellContent number = needles.get(size).flatMap(Needles::usNumber).<CellContent>map(CellContent.Text::new)
                    .orElseGet(() -> new CellContent.Text(Words.text("yarn.needles.none")));
            cells.put(row, FIRST_SIZE_COLUMN + size, number, Look.COMPUTED, Digits.ALL);
        }
    }

    private void notions() {
        List<String> texts = new ArrayList<>();
        if (plan.yarns() == 1) {
            materials.yarns().forEach(yarn -> texts.add(Words.text("yarn.text", MaterialWords.yarn(yarn))));
        }
        if (!materials.colours().isEmpty()) {
            texts.add(Words.text("yarn.colours", MaterialWords.colours(materials)));
        }
        materials.swatch().ifPresent(swatch -> texts.add(Words.text("yarn.swatch", MaterialWords.swatch(swatch))));
        texts.addAll(materials.notions());
        if (texts.isEmpty()) {
            return;
        }
        group(Words.text("yarn.needed"));
        int characters = LABEL_CHARACTERS + UNIT_CHARACTERS + SIZE_CHARACTERS * graded.sizes().size();
        for (String text : texts) {
            row++;
            cells.text(row, LABEL_COLUMN, lastColumn, characters, text);
        }
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        cells.fit(LABEL_COLUMN, LABEL_CHARACTERS, LABEL_CHARACTERS);
        cells.fit(UNIT_COLUMN, UNIT_CHARACTERS, UNIT_CHARACTERS);
        for (int column = FIRST_SIZE_COLUMN; column <= lastColumn; column++) {
            cells.fit(column, SIZE_CHARACTERS, 14);
        }
        sheet.createFreezePane(FIRST_SIZE_COLUMN, HEAD_ROW + 1);
        sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
        sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, LABEL_COLUMN, UNIT_COLUMN));
        PrintLayout.table(sheet, PatternSheet.title(graded), graded.sizes().size());
    }
}
