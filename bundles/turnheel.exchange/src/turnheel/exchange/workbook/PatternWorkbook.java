package turnheel.exchange.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.zip.Deflater;

import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.engine.grading.Graded;
import turnheel.exchange.imprint.Product;

/** A graded pattern as a workbook with the sheets Pattern, Measurements, Counts and Rounds. */
public final class PatternWorkbook {

    /** The time of every document and of every part in it: an export has no clock, so that it can be compared. */
    private static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

    private final XSSFWorkbook workbook;
    private final Styles styles;
    private final Texts texts;
    private final Graded graded;

    private PatternWorkbook(Graded graded, XSSFWorkbook workbook) {
        this.graded = graded;
        this.workbook = workbook;
        this.styles = new Styles(workbook);
        this.texts = new Texts(workbook.getSharedStringSource());
    }

    /**
     * Writes the workbook. The same graded pattern gives the same bytes; the stream is not closed.
     *
     * @throws IOException when the stream fails
     */
    public static void write(Graded graded, OutputStream out) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = new XSSFWorkbook(LeanSheet.FACTORY)) {
            new PatternWorkbook(graded, workbook).fill();
            // packed for good below; to do it twice would take a quarter of the time
            try (ZipArchiveOutputStream loose = new ZipArchiveOutputStream(packed)) {
                loose.setLevel(Deflater.NO_COMPRESSION);
                workbook.write(loose);
            }
        }
        FixedZip.copy(packed.toByteArray(), TIME, out);
    }

    private void fill() {
        sheet(PatternSheet.NAME, PatternSheet::write);
        sheet(MeasurementsSheet.NAME, MeasurementsSheet::write);
        sheet(CountsSheet.NAME, CountsSheet::write);
        sheet(RoundsSheet.NAME, RoundsSheet::write);
        properties();
    }

    private void sheet(String name, BiConsumer<Graded, CellWriter> content) {
        content.accept(graded, new CellWriter((LeanSheet) workbook.createSheet(name), styles, texts));
    }

    private void properties() {
        POIXMLProperties properties = workbook.getProperties();
        Optional<Date> time = Optional.of(Date.from(TIME.toInstant(ZoneOffset.UTC)));
        properties.getCoreProperties().setCreated(time);
        properties.getCoreProperties().setModified(time);
        properties.getCoreProperties().setTitle(SafeText.ofLine(PatternSheet.title(graded)));
        properties.getCoreProperties().setCreator(Product.NAME);
        properties.getExtendedProperties().setApplication(Product.NAME);
    }
}
