package turnheel.exchange.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.engine.grading.Graded;
import turnheel.exchange.imprint.Product;
import turnheel.exchange.office.FixedZip;
import turnheel.exchange.office.OneLine;

/** A graded pattern as a workbook with the sheets Pattern, Measurements, Counts and Rounds. */
public final class PatternWorkbook {

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
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            new PatternWorkbook(graded, workbook).fill();
            workbook.write(packed);
        }
        FixedZip.copy(packed.toByteArray(), out);
    }

    private void fill() {
        // the engine's notation is known to be right, and a test reads every formula back; parsing each costs time
        workbook.setCellFormulaValidation(false);
        sheet(PatternSheet.NAME, PatternSheet::write);
        sheet(MeasurementsSheet.NAME, MeasurementsSheet::write);
        sheet(CountsSheet.NAME, CountsSheet::write);
        sheet(RoundsSheet.NAME, RoundsSheet::write);
        properties();
    }

    private void sheet(String name, BiConsumer<Graded, CellWriter> content) {
        content.accept(graded, new CellWriter(workbook.createSheet(name), styles, texts));
    }

    private void properties() {
        POIXMLProperties properties = workbook.getProperties();
        Optional<Date> time = Optional.of(Date.from(FixedZip.TIME.toInstant(ZoneOffset.UTC)));
        properties.getCoreProperties().setCreated(time);
        properties.getCoreProperties().setModified(time);
        properties.getCoreProperties().setTitle(OneLine.of(PatternSheet.title(graded)));
        properties.getCoreProperties().setCreator(Product.NAME);
        properties.getExtendedProperties().setApplication(Product.NAME);
    }
}
