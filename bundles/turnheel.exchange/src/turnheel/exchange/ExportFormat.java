package turnheel.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import turnheel.engine.design.Spelling;
import turnheel.engine.grading.Graded;
import turnheel.exchange.csv.CountsCsv;
import turnheel.exchange.drawing.Drawn;
import turnheel.exchange.drawing.PngWriter;
import turnheel.exchange.drawing.SvgWriter;
import turnheel.exchange.workbook.PatternWorkbook;

/** The kinds of file that a pattern can be exported to. A new one is added here, and nowhere else. */
public enum ExportFormat {
    /** All sheets, with live formulas. */
    WORKBOOK(".xlsx"),
    /** The grading table alone, as values. */
    TABLE(".csv"),
    /** The outline with its measurements, or a chart, as vectors. */
    DRAWING(".svg"),
    /** The same as dots, with their scale. */
    IMAGE(".png");

    private final String ending;

    ExportFormat(String ending) {
        this.ending = ending;
    }

    /** The ending of its files, with the dot. */
    public String ending() {
        return ending;
    }

    /** The endings of all formats, in the order in which they are offered. */
    public static List<String> endings() {
        return Arrays.stream(values()).map(ExportFormat::ending).toList();
    }

    /**
     * The format that a file's ending names, in upper or lower case.
     *
     * @throws ExportException when it names none; the message lists the known endings
     */
    public static ExportFormat of(Path target) throws ExportException {
        String name = target.getFileName() == null ? "" : target.getFileName().toString().toLowerCase(Locale.ROOT);
        for (ExportFormat format : values()) {
            if (name.endsWith(format.ending) && name.length() > format.ending.length()) {
                return format;
            }
        }
        String known = String.join(", ", endings());
        Optional<String> nearest = name.contains(".")
                ? Spelling.suggestion(name.substring(name.lastIndexOf('.')), endings()) : Optional.empty();
        throw new ExportException(nearest.isPresent()
                ? Words.text("unknownEnding.nearest", target.toString(), nearest.get(), known)
                : Words.text("unknownEnding", target.toString(), known));
    }

    /** Whether a file shows a part or a size of the designer's choice. */
    public boolean isDrawn() {
        return this == DRAWING || this == IMAGE;
    }

    /**
     * Writes a graded pattern in this format. The same pattern gives the same bytes; the stream is not closed.
     *
     * @param drawn what a drawing shows; the others hold the whole pattern
     */
    public void write(Graded graded, Drawn drawn, OutputStream out) throws IOException {
        switch (this) {
            case WORKBOOK -> PatternWorkbook.write(graded, out);
            case TABLE -> CountsCsv.write(graded, out);
            case DRAWING -> SvgWriter.write(drawn.of(graded), out);
            case IMAGE -> PngWriter.write(drawn.of(graded), out);
        }
    }
}
