package turnheel.engine.knitting;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import turnheel.engine.query.Place;
import turnheel.engine.query.Query;

/** The manuscripts under {@code manuscripts} of the test resources; its README tells their form. */
final class Corpus {

    /**
     * A query as the tables tell it and as a person sees it.
     *
     * @param sizes their labels with commas, {@code *} for all
     * @param values {@code expected/found}; only a slash where the tables name none
     */
    record Told(String id, int line, String sizes, String values) {

        static Told of(Query query, List<String> all) {
            if (!(query.place() instanceof Place.Text(int line, int from, int to))) {
                throw new IllegalArgumentException("%s concerns no text".formatted(query));
            }
            String sizes = query.sizes().equals(all) ? "*" : String.join(",", query.sizes());
            return new Told(query.check().id(), line, sizes, query.expected() + "/" + query.found());
        }

        Told withoutValues() {
            return new Told(id, line, sizes, "/");
        }

        private boolean hasValues() {
            return !"/".equals(values);
        }
    }

    /** A mistake that was put into a correct manuscript, and the query that it must raise. */
    record Slip(String file, int line, String old, String wrong, Told query) {

        private static Slip read(List<String> cells) {
            return new Slip(cells.get(0), Integer.parseInt(cells.get(1)), cells.get(2), cells.get(3),
                    new Told(cells.get(4), Integer.parseInt(cells.get(5)), cells.get(6), cells.get(7) + "/" + cells.get(8)));
        }

        private void plant(List<String> text) {
            String right = text.get(line - 1);
            int at = right.indexOf(old);
            if (at < 0 || right.indexOf(old, at + 1) >= 0) {
                throw new IllegalStateException("%s:%d has not one '%s'".formatted(file, line, old));
            }
            text.set(line - 1, right.substring(0, at) + wrong + right.substring(at + old.length()));
        }

        @Override
        public String toString() {
            return "%s:%d %s → %s".formatted(file, line, old, wrong);
        }
    }

    private static final Path ROOT = root();

    /** Values of three or more further sizes, in brackets after that of the first. */
    private static final Pattern LIST = Pattern
            .compile("(?<=[\\p{L}\\d½¼¾–-] )\\(([-–\\d./ ½¼¾]+(?:, [-–\\d./ ½¼¾]+){2,})\\)|(?<=^Sizes: [^ (]{1,9} )\\(([^()]*)\\)",
                    Pattern.MULTILINE);

    private Corpus() {
    }

    private static Path root() {
        try {
            return Path.of(Objects.requireNonNull(Corpus.class.getResource("/manuscripts")).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static List<String> correctFiles() {
        try (Stream<Path> files = Files.list(ROOT.resolve("correct"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String correct(String file) {
        return String.join("\n", lines(ROOT.resolve("correct").resolve(file)));
    }

    static List<Slip> slips() {
        return rows("slips.tsv").stream().map(Slip::read).toList();
    }

    /** Slips that stand in one text together. */
    static List<List<Slip>> pairs() {
        Map<String, List<Slip>> pairs = new LinkedHashMap<>();
        for (List<String> row : rows("two-slips.tsv")) {
            pairs.computeIfAbsent(row.getFirst(), absent -> new ArrayList<>()).add(Slip.read(row.subList(1, row.size())));
        }
        return List.copyOf(pairs.values());
    }

    /** The queries of a text, in its order. */
    static List<Told> queries(String text) {
        Manuscript manuscript = Manuscript.read(text);
        return manuscript.knit().queries().stream().map(query -> Told.of(query, manuscript.sizes())).toList();
    }

    /** The queries of a text with slips, without the values of those whose slip tells none. */
    static List<Told> queries(List<Slip> slips) {
        return queries(slips, text -> text);
    }

    /** The same of the text after a change that leaves its lines where they are and its meaning as it is. */
    static List<Told> queries(List<Slip> slips, UnaryOperator<String> change) {
        List<String> text = new ArrayList<>(lines(ROOT.resolve("correct").resolve(slips.getFirst().file())));
        slips.forEach(slip -> slip.plant(text));
        List<String> told = slips.stream().map(Slip::query).filter(Told::hasValues).map(Told::id).toList();
        return queries(change.apply(String.join("\n", text))).stream()
                .map(query -> told.contains(query.id()) ? query : query.withoutValues()).toList();
    }

    /** The text with every such list in two brackets, the first of which holds the larger half. */
    static String inGroups(String text) {
        return LIST.matcher(text).replaceAll(list -> {
            List<String> values = List.of((list.group(1) == null ? list.group(2) : list.group(1)).split(", "));
            int half = Math.ceilDiv(values.size(), 2);
            return values.size() < 3 ? Matcher.quoteReplacement(list.group()) : "(%s) (%s)".formatted(
                    String.join(", ", values.subList(0, half)), String.join(", ", values.subList(half, values.size())));
        });
    }

    private static List<List<String>> rows(String table) {
        return lines(ROOT.resolve(table)).stream().skip(1).map(row -> List.of(row.split("\t", -1))).toList();
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
