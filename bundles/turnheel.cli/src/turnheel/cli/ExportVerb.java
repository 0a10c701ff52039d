package turnheel.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.exchange.Edition;
import turnheel.exchange.ExportException;
import turnheel.exchange.ExportFormat;
import turnheel.exchange.Exports;
import turnheel.exchange.drawing.Drawn;

/** {@code export}: the graded pattern as a file for other programs. */
@Command(name = "export")
final class ExportVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--to", order = 1, paramLabel = "OUT", required = true)
    private String target;

    @Option(names = "--part", order = 2, paramLabel = "PART")
    private String part;

    @Option(names = "--size", order = 3, paramLabel = "SIZE")
    private String size;

    @Mixin
    private StyleOption style;

    @Option(names = "--force", order = 5)
    private boolean force;

    ExportVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        Path file = PatternArgument.path(target);
        ExportFormat format;
        Graded graded;
        try {
            format = ExportFormat.of(file);
            Edition edition = edition(format);
            requireFree(file);
            graded = graded(edition);
            Exports.write(graded, edition, file, force);
        } catch (ExportException failed) {
            throw new Refusal(failed.getMessage());
        }
        if (isJson()) {
            output().document(Json.document("turnheel-export/1", json -> {
                json.writeStringField("file", target);
                json.writeStringField("format", format.ending().substring(1));
            }));
        } else {
            output().line(Words.EXPORT_WRITTEN.with(target));
        }
        return Verdict.noted(Checks.of(graded), output(), pattern.name());
    }

    /** What is exported. An option that the format has no use for would promise what is not done. */
    private Edition edition(ExportFormat format) throws Refusal {
        if (part != null && format.kind() != ExportFormat.Kind.DRAWN) {
            throw new Refusal(refused("--part", ExportFormat.Kind.DRAWN));
        }
        if (style.isGiven() && format.kind() != ExportFormat.Kind.WRITTEN) {
            throw new Refusal(refused("--style", ExportFormat.Kind.WRITTEN));
        }
        if (size != null && format.kind() == ExportFormat.Kind.WHOLE) {
            throw new Refusal(refused("--size", ExportFormat.Kind.DRAWN, ExportFormat.Kind.WRITTEN));
        }
        Drawn.What what = part == null ? Drawn.What.OUTLINE : Choice.of("--part", part, Drawn.What.class);
        return new Edition(what, Optional.ofNullable(size), style.chosen());
    }

    private String refused(String option, ExportFormat.Kind... kinds) {
        return refused(option, target, kinds);
    }

    /** That an option changes nothing in {@code what}, with the endings of the kinds in which it would. */
    static String refused(String option, String what, ExportFormat.Kind... kinds) {
        String endings = Arrays.stream(ExportFormat.values())
                .filter(format -> List.of(kinds).contains(format.kind())).map(ExportFormat::ending)
                .collect(Collectors.joining(", "));
        return Words.EXPORT_WHOLE.with(option, what, endings);
    }

    /** The pattern, measured as far as it is exported. */
    private Graded graded(Edition edition) throws Refusal {
        if (edition.size().isEmpty()) {
            return pattern.complete();
        }
        Graded graded = pattern.complete(List.of(size));
        CellName.knownSize(graded.design(), size, pattern.name());
        return graded;
    }

    /** The exporter would refuse it too, but does not know what the option is called here. */
    private void requireFree(Path file) throws Refusal {
        if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(file)) {
            throw new Refusal(Words.EXISTS.with(target));
        }
    }
}
