package turnheel.exchange;

import java.nio.file.Path;
import java.util.Locale;

import turnheel.engine.comparing.Comparison;
import turnheel.exchange.errata.ErrataDocument;
import turnheel.exchange.errata.ErrataTable;
import turnheel.exchange.workbook.TableWorkbook;

/** Writes errata sheets to files: as a document, or as a table with a record for every erratum. */
public final class ErrataFiles {

    private ErrataFiles() {
    }

    /**
     * Writes the sheet in the format that the target's ending names. The file appears whole or not at all.
     *
     * @param force whether a file that exists is replaced
     * @throws ExportException when the ending is neither a table's nor a document's, the file exists and {@code force}
     *     was not given, or it cannot be written; whatever was there before is unchanged
     */
    public static void write(Comparison comparison, Path target, boolean force) throws ExportException {
        if (has(target, ExportFormat.TABLE)) {
            Exports.writeText(ErrataTable.csv(comparison), target, force);
        } else if (has(target, ExportFormat.WORKBOOK)) {
            Exports.write(out -> TableWorkbook.write(Words.text("errata.sheet"), ErrataTable.COLUMNS,
                    ErrataTable.rows(comparison), out), target, force);
        } else {
            Exports.write(ErrataDocument.of(comparison), target, force);
        }
    }

    private static boolean has(Path target, ExportFormat format) {
        return target.toString().toLowerCase(Locale.ROOT).endsWith(format.ending());
    }
}
