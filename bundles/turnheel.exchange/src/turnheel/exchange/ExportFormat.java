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
import turnheel.exchange.document.Document;
import turnheel.exchange.document.PatternDocument;
import turnheel.exchange.drawing.PngWriter;
import turnheel.exchange.drawing.SvgWriter;
import turnheel.exchange.html.HtmlWriter;
import turnheel.exchange.markdown.MarkdownWriter;
import turnheel.exchange.pdf.PdfWriter;
import turnheel.exchange.word.DocxWriter;
import turnheel.exchange.workbook.PatternWorkbook;

/** The kinds of file that a pattern can be exported to. A new one is added here, and nowhere else. */
public enum ExportFormat {
    /** All sheets, with live formulas. */
    WORKBOOK(".xlsx", Kind.WHOLE),
    /** The grading table alone, as values. */
    TABLE(".csv", Kind.WHOLE),
    /** The outline with its measurements, or a chart, as vectors. */
    DRAWING(".svg", Kind.DRAWN),
    /** The same as dots, with their scale. */
    IMAGE(".png", Kind.DRAWN),
    /** The written pattern as one page for a browser, with its drawings. */
    PAGE(".html", Kind.WRITTEN),
    /** The written pattern as pages for paper, with its drawings; or one drawing alone, on its pages. */
    PRINT(".pdf", Kind.WRITTEN),
    /** The written pattern for a word processor, with a style for each purpose. */
    MANUSCRIPT(".docx", Kind.WRITTEN),
    /** The written pattern as plain text with the marks of Markdown. */
    MARKDOWN(".md", Kind.WRITTEN);

    /** What a format holds, and so what of an edition concerns it. */
    public enum Kind {
        /** All that is known of the pattern, in every size; nothing can be left out. */
        WHOLE,
        /** One drawing, of every size or one. */
        DRAWN,
        /** The written pattern in a house style, for every size or one, with its drawings. */
        WRITTEN
    }

    private final String ending;
    private final Kind kind;

    ExportFormat(String ending, Kind kind) {
        this.ending = ending;
        this.kind = kind;
    }

    /** The ending of its files, with the dot. */
    public String ending() {
        return ending;
    }

    /** The endings of all formats, in the order in which they are offered. */
    public static List<String> endings() {
        return endings(Arrays.asList(values()));
    }

    private static List<String> endings(List<ExportFormat> formats) {
        return formats.stream().map(ExportFormat::ending).toList();
    }

    /**
     * The format that a file's ending names, in upper or lower case.
     *
     * @throws ExportException when it names none; the message lists the known endings
     */
    public static ExportFormat of(Path target) throws ExportException {
        return of(target, Arrays.asList(values()));
    }

    /**
     * The format of a document of any kind, such as a hand-out, that a file's ending names.
     *
     * @throws ExportException when it names none; the message lists the endings of such formats
     */
    public static ExportFormat ofDocument(Path target) throws ExportException {
        return of(target, Arrays.stream(values()).filter(format -> format.kind == Kind.WRITTEN).toList());
    }

    private static ExportFormat of(Path target, List<ExportFormat> formats) throws ExportException {
        String name = target.getFileName() == null ? "" : target.getFileName().toString().toLowerCase(Locale.ROOT);
        for (ExportFormat format : formats) {
            if (name.endsWith(format.ending) && name.length() > format.ending.length()) {
                return format;
            }
        }
        String known = String.join(", ", endings(formats));
        Optional<String> nearest = name.contains(".")
                ? Spelling.suggestion(name.substring(name.lastIndexOf('.')), endings(formats)) : Optional.empty();
        throw new ExportException(nearest.isPresent()
                ? Words.text("unknownEnding.nearest", target.toString(), nearest.get(), known)
                : Words.text("unknownEnding", target.toString(), known));
    }

    public Kind kind() {
        return kind;
    }

    /** Whether a file can hold one drawing and nothing else. */
    public boolean canDraw() {
        return kind == Kind.DRAWN || this == PRINT;
    }

    /** Whether a file of this edition holds one drawing and nothing else. */
    boolean draws(Edition edition) {
        return kind == Kind.DRAWN || canDraw() && edition.only().isPresent();
    }

    /**
     * Writes a graded pattern in this format. The same pattern gives the same bytes; the stream is not closed.
     *
     * @param edition what of the pattern, as far as this format can leave something out
     */
    public void write(Graded graded, Edition edition, OutputStream out) throws IOException {
        switch (this) {
            case WORKBOOK -> PatternWorkbook.write(graded, out);
            case TABLE -> CountsCsv.write(graded, out);
            case DRAWING -> SvgWriter.write(edition.drawing().of(graded), out);
            case IMAGE -> PngWriter.write(edition.drawing().of(graded), out);
            case PAGE, MANUSCRIPT, MARKDOWN ->
                write(PatternDocument.of(graded, edition.style(), edition.size()), out);
            case PRINT -> write(draws(edition)
                    ? PatternDocument.ofDrawing(graded, edition.drawing())
                    : PatternDocument.of(graded, edition.style(), edition.size()), out);
        }
    }

    /**
     * Writes a document of any kind in this format. The same document gives the same bytes; the stream is not closed.
     *
     * @throws IllegalArgumentException when files of this format hold no documents, see {@link #ofDocument}
     */
    public void write(Document document, OutputStream out) throws IOException {
        switch (this) {
            case PAGE -> HtmlWriter.write(document, out);
            case PRINT -> PdfWriter.write(document, out);
            case MANUSCRIPT -> DocxWriter.write(document, out);
            case MARKDOWN -> MarkdownWriter.write(document, out);
            case WORKBOOK, TABLE, DRAWING, IMAGE ->
                throw new IllegalArgumentException("a %s file does not hold \"%s\"".formatted(ending, document.title()));
        }
    }
}
