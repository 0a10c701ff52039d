package turnheel.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

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

    /** Filled in by the command line. */
    PatternArgument() {
    }

    /** One more pattern file that the same command is about. */
    PatternArgument(String name) {
        this.name = name;
    }

    /** The name as it was given, for messages. */
    String name() {
        return name;
    }

    /** Where the file is or will be; it may not be there. */
    Path path() throws Refusal {
        return patternPath(name);
    }

    private static Path patternPath(String name) throws Refusal {
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
        return document(name);
    }

    private static Pattern document(String name) throws Refusal {
        // A missing file is a likelier slip than a file of another kind.
        Path path = path(name);
        if (Files.isDirectory(path)) {
            throw new Refusal(Words.IS_A_FOLDER.with(name));
        }
        if (!Files.exists(path)) {
            throw new Refusal(Words.NO_SUCH_FILE.with(name));
        }
        try {
            return PatternFiles.load(patternPath(name));
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
        requireMeasured(name, graded, sizes);
        return graded;
    }

    /** As {@link #complete(List)}, of all sizes. */
    Graded complete() throws Refusal {
        return complete(name, Optional.empty());
    }

    /** A pattern file that no command names by itself, graded and measured in one size, or in all. */
    static Graded complete(Path file, Optional<String> size) throws Refusal {
        return complete(file.toString(), size);
    }

    private static Graded complete(String name, Optional<String> size) throws Refusal {
        Graded graded = Patterns.grade(design(document(name)));
        requireMeasured(name, graded, size.map(List::of)
                .orElseGet(() -> graded.design().sizes().stream().map(each -> each.label()).toList()));
        return graded;
    }

    private static void requireMeasured(String name, Graded graded, List<String> sizes) throws Refusal {
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
