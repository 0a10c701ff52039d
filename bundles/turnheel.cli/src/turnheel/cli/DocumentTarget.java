package turnheel.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;

import picocli.CommandLine.Option;

import turnheel.exchange.ExportException;
import turnheel.exchange.Exports;
import turnheel.exchange.TestKnitFiles;
import turnheel.exchange.document.Document;

/** Where a document goes: to a file by its ending, or to standard output. */
final class DocumentTarget {

    @Option(names = "--to", order = 10, paramLabel = "OUT", descriptionKey = "to-document")
    private String target;

    @Option(names = "--force", order = 11, descriptionKey = "force")
    private boolean force;

    /** The name of the file as it was given; null for standard output. */
    String name() {
        return target;
    }

    boolean isForced() {
        return force;
    }

    Path file() throws Refusal {
        return PatternArgument.path(target);
    }

    /** Whether it is a file that a program fills in, not one that a person reads. */
    boolean isTable() {
        return target != null && TestKnitFiles.isTable(target);
    }

    /** Refuses a file that cannot be written, before anything is made for it. */
    void requireFree() throws Refusal {
        if (target == null) {
            return;
        }
        Path file = file();
        if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(file)) {
            throw new Refusal(Words.EXISTS.with(target));
        }
    }

    /** Writes it, or shows it. */
    void put(Document document, Output output, boolean asJson) throws Refusal {
        if (target == null) {
            if (asJson) {
                output.document(DocumentJson.of(document));
            } else {
                output.lines(DocumentText.lines(document));
            }
            return;
        }
        try {
            Exports.write(document, file(), force);
        } catch (ExportException failed) {
            throw new Refusal(failed.getMessage());
        }
        written(output, asJson);
    }

    /** Says that the file is there. */
    void written(Output output, boolean asJson) {
        if (asJson) {
            output.document(Json.document("turnheel-export/1", json -> {
                json.writeStringField("file", target);
                json.writeStringField("format",
                        target.substring(target.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
            }));
        } else {
            output.line(Words.EXPORT_WRITTEN.with(target));
        }
    }
}
