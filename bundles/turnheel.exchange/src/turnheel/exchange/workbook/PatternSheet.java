package turnheel.exchange.workbook;

import org.apache.poi.ss.util.CellRangeAddress;

import turnheel.engine.design.Design;
import turnheel.engine.design.Materials;
import turnheel.engine.design.YarnLine;
import turnheel.engine.grading.Graded;
import turnheel.engine.writing.Caution;
import turnheel.exchange.imprint.ContentHash;
import turnheel.exchange.imprint.MaterialWords;
import turnheel.exchange.imprint.PartWords;
import turnheel.exchange.imprint.Product;
import turnheel.exchange.table.CellContent;

/** The title page: what was designed, for which sizes, with which cautions, and which state of it this is. */
final class PatternSheet {

    static final String NAME = Words.text("pattern.sheet");

    private static final int LABEL_COLUMN = 0;
    private static final int TEXT_COLUMN = 1;
    private static final int LABEL_CHARACTERS = 18;
    private static final int TEXT_CHARACTERS = 70;
    private static final int TITLE_CHARACTERS = 56;

    private final Graded graded;
    private final CellWriter cells;
    private int row;

    private PatternSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
    }

    static void write(Graded graded, CellWriter cells) {
        new PatternSheet(graded, cells).write();
    }

    /** The title of a pattern as it stands on every page. */
    static String title(Graded graded) {
        return title(graded.design());
    }

    static String title(Design design) {
        String title = design.title();
        return title.isBlank() ? Words.text("pattern.untitled") : title;
    }

    private void write() {
        cells.title(TEXT_COLUMN, TITLE_CHARACTERS, title(graded));
        design(graded.design());
        materials(graded.design().materials());
        sizes();
        group("cautions");
        Caution.of(graded).forEach(this::caution);
        group("file");
        line("hash", ContentHash.of(graded.design()));
        line("product", Product.NAME);
        line("names", Words.text("pattern.names.text", CellNames.of(graded.parameters().getFirst().key(), 0),
                graded.sizes().getFirst().label()));
        cells.fit(LABEL_COLUMN, LABEL_CHARACTERS, LABEL_CHARACTERS);
        cells.fit(TEXT_COLUMN, TEXT_CHARACTERS, TEXT_CHARACTERS);
        cells.sheet().createFreezePane(0, 1);
        cells.sheet().setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
        PrintLayout.upright(cells.sheet(), title(graded));
    }

    private void design(Design design) {
        group("design");
        line("stitchGauge", PartWords.stitchGauge(design.stitchGauge()));
        line("roundGauge", PartWords.roundGauge(design.roundGauge()));
        line("direction", PartWords.direction(design.direction()));
        line("toe", PartWords.toe(design.toe(), design.direction()));
        line("heel", PartWords.heel(design.heel(), design.direction()));
        line("leg", PartWords.leg(design.leg()));
        line("cuff", PartWords.cuff(design.cuff()));
        line("lengths", PartWords.lengths(design.lengths()));
        design.stitchPatterns().forEach(pattern -> line("stitchPattern", PartWords.stitchPattern(pattern)));
    }

    private void materials(Materials materials) {
        if (materials.equals(Materials.UNDECIDED)) {
            return;
        }
        group("materials");
        int number = 0;
        for (YarnLine yarn : materials.yarns()) {
            number++;
            labelled(Words.text("pattern.yarn", Integer.toString(number)), MaterialWords.yarn(yarn));
        }
        if (!materials.colours().isEmpty()) {
            line("colours", MaterialWords.colours(materials));
        }
        materials.needle().ifPresent(needle -> line("needle", MaterialWords.needle(needle)));
        materials.swatch().ifPresent(swatch -> line("swatch", MaterialWords.swatch(swatch)));
        materials.notions().forEach(notion -> line("notion", notion));
    }

    private void sizes() {
        group("sizes");
        for (int size = 0; size < graded.sizes().size(); size++) {
            row++;
            cells.put(row, LABEL_COLUMN, Words.text("pattern.size", Integer.toString(size + 1)), Look.LABEL);
            cells.put(row, TEXT_COLUMN, graded.sizes().get(size).label(), Look.TEXT);
        }
    }

    private void caution(Caution caution) {
        row++;
        cells.put(row, LABEL_COLUMN, Words.text("caution." + caution.matter().name()), Look.LABEL);
        cells.put(row, TEXT_COLUMN, caution.sentence(),
                caution.matter() == Caution.Matter.TIGHT ? Look.WARNING : Look.TEXT);
    }

    private void group(String name) {
        row += 2;
        cells.put(row, LABEL_COLUMN, Words.text("pattern.group." + name), Look.GROUP);
        cells.put(row, TEXT_COLUMN, new CellContent.Empty(), Look.GROUP, Digits.ALL);
    }

    private void line(String name, String text) {
        labelled(Words.text("pattern." + name), text);
    }

    private void labelled(String label, String text) {
        row++;
        cells.put(row, LABEL_COLUMN, label, Look.LABEL);
        cells.put(row, TEXT_COLUMN, text, Look.TEXT);
    }
}
