package turnheel.exchange.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.zip.Deflater;

import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.engine.grading.Graded;
import turnheel.exchange.imprint.ContentHash;
import turnheel.exchange.imprint.PartWords;
import turnheel.exchange.imprint.Product;
import turnheel.exchange.office.FixedZip;
import turnheel.exchange.office.OneLine;

/**
 * A graded pattern as a workbook: title page, measurements, counts, rounds, instructions, round finder table,
 * gauge-by-size table and yarn, what an editor signs, and what a layouter draws from, a sheet each.
 */
public final class PatternWorkbook {

    private static final String LANGUAGE = "en";

    private final XSSFWorkbook workbook;
    private final Styles styles;
    private final Texts texts = new Texts();
    private final Graded graded;

    private PatternWorkbook(Graded graded, XSSFWorkbook workbook) {
        this.graded = graded;
        this.workbook = workbook;
        this.styles = new Styles(workbook);
    }

    /**
     * Writes the workbook. The same graded pattern gives the same bytes; the stream is not closed.
     *
     * @throws IOException when the stream fails
     */
    public static void write(Graded graded, OutputStream out) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            new PatternWorkbook(graded, workbook).fill();
            pack(workbook, out);
        }
    }

    /** Packs a workbook so that the same content gives the same bytes. */
    static void pack(XSSFWorkbook workbook, OutputStream out) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        // to compress it here, and once more for good below, would take a quarter of the time
        try (ZipArchiveOutputStream loose = new ZipArchiveOutputStream(all)) {
            loose.setLevel(Deflater.NO_COMPRESSION);
            workbook.write(loose);
        }
        FixedZip.copy(all.toByteArray(), out);
    }

    private void fill() {
        // the engine's notation is known to be right, and a test reads every formula back; parsing each costs time
        workbook.setCellFormulaValidation(false);
        sheet(PatternSheet.NAME, PatternSheet::write);
        sheet(MeasurementsSheet.NAME, MeasurementsSheet::write);
        sheet(CountsSheet.NAME, CountsSheet::write);
        sheet(RoundsSheet.NAME, RoundsSheet::write);
        sheet(InstructionsSheet.NAME, InstructionsSheet::write);
        sheet(RoundFinderSheet.NAME, RoundFinderSheet::write);
        sheet(GaugeSheet.NAME, GaugeSheet::write);
        sheet(YarnSheet.NAME, YarnSheet::write);
        sheet(QueriesSheet.NAME, QueriesSheet::write);
        sheet(DrawingSheet.NAME, DrawingSheet::write);
        properties(workbook, PatternSheet.title(graded));
        contents();
    }

    private void sheet(String name, BiConsumer<Graded, CellWriter> content) {
        XSSFSheet sheet = workbook.createSheet(name);
        content.accept(graded, new CellWriter(sheet, styles, texts));
        PrintLayout.imprint(sheet, ContentHash.of(graded.design()));
    }

    /** What a workbook says of itself. */
    static void properties(XSSFWorkbook workbook, String title) {
        POIXMLProperties properties = workbook.getProperties();
        Optional<Date> time = Optional.of(Date.from(FixedZip.TIME.toInstant(ZoneOffset.UTC)));
        properties.getCoreProperties().setCreated(time);
        properties.getCoreProperties().setModified(time);
        properties.getCoreProperties().setTitle(OneLine.of(title));
        properties.getCoreProperties().setCreator(Product.NAME);
        properties.getCoreProperties().getUnderlyingProperties().setLanguageProperty(LANGUAGE);
        properties.getExtendedProperties().setApplication(Product.NAME);
    }

    /** Which state of which design it holds. */
    private void contents() {
        POIXMLProperties properties = workbook.getProperties();
        properties.getCoreProperties().setSubjectProperty(Words.text("properties.subject",
                ContentHash.of(graded.design())));
        properties.getCoreProperties().setKeywords(Words.text("properties.keywords",
                PartWords.direction(graded.design().direction())));
    }
}
