package turnheel.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import turnheel.model.Literals;
import turnheel.model.pattern.StitchPatternElement;

/**
 * The rows of stitch patterns on the command line, after the zone of the pattern: {@code instep: @lace.txt} reads them
 * from a text file of one row a line, {@code instep: *K1, p1; rep from * to end / K to end} tells them, parted by slashes.
 * Several patterns are parted by two slashes.
 */
final class PatternRowsText {

    private static final String ROW_PARTED = " / ";
    private static final String PARTED = " // ";
    private static final String FILE = "@";
    /** Characters of a file; the longest pattern that a person would type is far shorter. */
    private static final long LONGEST_FILE = 1_000_000;

    private PatternRowsText() {
    }

    /** The rows of all patterns that have some; {@link #write} reads it back. */
    static String of(List<StitchPatternElement> patterns) {
        return patterns.stream().filter(pattern -> !pattern.getInstructions().isEmpty())
                .map(pattern -> Literals.text(pattern.getZone()) + ": "
                        + String.join(ROW_PARTED, pattern.getInstructions()))
                .collect(Collectors.joining(PARTED));
    }

    /** Gives patterns their rows; a zone with nothing after it loses them, and an empty text takes them from all. */
    static void write(List<StitchPatternElement> patterns, String given, String value) throws Refusal {
        if (value.isBlank()) {
            patterns.forEach(pattern -> pattern.getInstructions().clear());
            return;
        }
        for (String one : value.split(PARTED)) {
            int colon = one.indexOf(':');
            String zone = colon < 0 ? "" : one.substring(0, colon).strip();
            StitchPatternElement pattern = of(patterns, zone)
                    .orElseThrow(() -> new Refusal(Words.NO_PATTERN_FOR_ROWS.with(given, one.strip())));
            List<String> rows = rows(one.substring(colon + 1).strip());
            if (!rows.isEmpty() && rows.size() != pattern.getRows()) {
                throw new Refusal(Words.ROWS_DIFFER.with(given, zone, pattern.getRows(), rows.size()));
            }
            pattern.getInstructions().clear();
            pattern.getInstructions().addAll(rows);
        }
    }

    /** What a person wrote is kept when the size of a pattern changes; where it does not suit it, it is said. */
    static void keep(List<StitchPatternElement> before, List<StitchPatternElement> after) {
        after.forEach(pattern -> of(before, Literals.text(pattern.getZone()))
                .ifPresent(same -> pattern.getInstructions().addAll(same.getInstructions())));
    }

    private static Optional<StitchPatternElement> of(List<StitchPatternElement> patterns, String zone) {
        return patterns.stream().filter(pattern -> Literals.text(pattern.getZone()).equals(zone)).findFirst();
    }

    private static List<String> rows(String text) throws Refusal {
        if (text.isEmpty()) {
            return List.of();
        }
        if (!text.startsWith(FILE)) {
            return Arrays.stream(text.split(ROW_PARTED)).map(String::strip).toList();
        }
        String name = text.substring(FILE.length());
        Path file = PatternArgument.path(name);
        if (!Files.exists(file)) {
            throw new Refusal(Words.NO_SUCH_FILE.with(name));
        }
        try {
            if (Files.size(file) <= LONGEST_FILE) {
                return Files.readString(file).lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
            }
        } catch (IOException unreadable) {
            throw new Refusal(Words.ROWS_UNREADABLE.with(name));
        }
        throw new Refusal(Words.ROWS_UNREADABLE.with(name));
    }
}
