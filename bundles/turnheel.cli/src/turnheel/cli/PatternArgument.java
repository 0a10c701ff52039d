package turnheel.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

import picocli.CommandLine.Parameters;

import turnheel.engine.design.Design;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.yarn.Patterns;
import turnheel.model.DocumentException;
import turnheel.model.Door;
import turnheel.model.PatternFiles;
import turnheel.model.pattern.Pattern;

/** The pattern file that a command is about. */
final class PatternArgument {

    private static final String ENDING = "." + PatternFiles.EXTENSION;

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "pattern-file")
    private String name;

    /** The name as it was given, for messages. */
    String name() {
        return name;
    }

    /** Where the file is or will be; it may not be there. */
    Path path() throws Refusal {
        Path path = path(name);
        if (!name.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            throw new Refusal(Words.NOT_A_PATTERN_NAME.with(name, ENDING));
        }
        return path;
    }

    static Path path(String name) throws Refusal {
        try {
            return Path.of(name);
        } catch (InvalidPathException invalid) {
            throw new Refusal(Words.NOT_A_PATH.with(name));
        }
    }

    /** The document in the file, to edit. */
    Pattern document() throws Refusal {
        // A missing file is a likelier slip than a file of another kind.
        Path path = path(name);
        if (Files.isDirectory(path)) {
            throw new Refusal(Words.IS_A_FOLDER.with(name));
        }
        if (!Files.exists(path)) {
            throw new Refusal(Words.NO_SUCH_FILE.with(name));
        }
        try {
            return PatternFiles.load(path());
        } catch (DocumentException unreadable) {
            throw new Refusal(unreadable);
        }
    }

    static Design design(Pattern document) throws Refusal {
        try {
            return Door.design(document);
        } catch (DocumentException incomplete) {
            throw new Refusal(incomplete);
        }
    }

    /** The pattern in the file, graded; a size may lack measurements. */
    Graded graded() throws Refusal {
        return Patterns.grade(design(document()));
    }

    /** The pattern in the file, graded, for a result that would have holes were {@code sizes} not measured. */
    Graded complete(List<String> sizes) throws Refusal {
        Graded graded = graded();
        requireMeasured(graded, sizes);
        return graded;
    }

    /** As {@link #complete(List)}, of all sizes. */
    Graded complete() throws Refusal {
        Graded graded = graded();
        requireMeasured(graded, graded.design().sizes().stream().map(size -> size.label()).toList());
        return graded;
    }

    private void requireMeasured(Graded graded, List<String> sizes) throws Refusal {
        for (Query query : graded.queries()) {
            if (query.check() == Check.MEASUREMENT_MISSING && query.sizes().stream().anyMatch(sizes::contains)) {
                throw new Refusal(Words.NO_MEASUREMENT.with(name, query.sizes().getFirst(), query.key()));
            }
        }
    }

    /** Refuses files that are there already. The exporter would too, but does not know what the option is called here. */
    static void requireFree(Collection<Path> files, boolean force) throws Refusal {
        for (Path file : files) {
            if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(file)) {
                throw new Refusal(Words.EXISTS.with(file));
            }
        }
    }
}
