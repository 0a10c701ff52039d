package turnheel.exchange.testknit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.design.Length;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Spelling;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.exchange.table.Grid;

/**
 * What test knitters found, read from a table that {@link ResultTable} made. Whoever filled it in may have sorted it,
 * dropped rows and columns, and written lengths with a unit of their own.
 *
 * @param answers rows with anything found or remarked, in the order of the pattern's sizes and the sheet
 * @param problems what must be put right first
 */
public record TestKnitResults(List<Answer> answers, List<ResultProblem> problems) {

    private static final String SIZE = "size";
    private static final String KEY = "key";
    private static final String ACTUAL = "actual";
    private static final String REMARK = "remark";
    private static final List<String> NEEDED = List.of(SIZE, KEY, ACTUAL);
    private static final int NOWHERE = 0;
    /** Larger is a slip of the pen: stitches of a blanket, kilograms of yarn. */
    private static final double MOST = 10_000;
    private static final double MM_PER_CM = 10;
    /** A figure with or without the unit of its kind; a comma is a decimal mark, since thousands do not occur. */
    private static final Pattern FIGURE = Pattern.compile(
            "(\\d+(?:[.,]\\d+)?)\\s*(?:sts?|rnds?|rows?|g|h|hours?|per 10 cm)?");

    public TestKnitResults {
        answers = List.copyOf(answers);
        problems = List.copyOf(problems);
    }

    /** Reads the results for a pattern. Nothing here throws for what stands in the table. */
    public static TestKnitResults read(Grid grid, Graded graded) {
        return new Reading(graded).read(grid);
    }

    /** Nothing could be read. */
    public static TestKnitResults unreadable(String why) {
        return new TestKnitResults(List.of(), List.of(new ResultProblem(ResultProblem.Kind.UNREADABLE, NOWHERE, NOWHERE,
                why, "")));
    }

    /** One table being read. */
    private static final class Reading {

        private final Graded graded;
        private final List<ResultProblem> problems = new ArrayList<>();
        private final Map<String, Integer> columns = new HashMap<>();
        private final Map<String, Map<String, Answer>> found = new HashMap<>();
        private final Set<String> seen = new HashSet<>();

        Reading(Graded graded) {
            this.graded = graded;
        }

        TestKnitResults read(Grid grid) {
            if (grid.fault().isPresent()) {
                return unreadable(Words.text("fault." + grid.fault().get().name()));
            }
            if (!grid.rows().isEmpty() && head(grid.rows().getFirst())) {
                grid.rows().stream().skip(1).forEach(this::row);
            }
            List<Answer> answers = inOrder();
            if (answers.isEmpty() && problems.isEmpty()) {
                problem(ResultProblem.Kind.NOTHING, NOWHERE, NOWHERE, "", "");
            }
            return new TestKnitResults(answers, problems);
        }

        private boolean head(Grid.Row row) {
            for (int column = 0; column < row.cells().size(); column++) {
                String heading = row.cell(column).toLowerCase(Locale.ROOT);
                if (ResultTable.COLUMNS.contains(heading) && columns.putIfAbsent(heading, column) != null) {
                    problem(ResultProblem.Kind.DUPLICATE_COLUMN, row.number(), column, heading, "");
                }
            }
            for (String needed : NEEDED) {
                if (!columns.containsKey(needed)) {
                    problems.add(new ResultProblem(ResultProblem.Kind.NO_COLUMN, row.number(), NOWHERE, needed,
                            String.join(", ", NEEDED)));
                }
            }
            return problems.isEmpty();
        }

        private void row(Grid.Row row) {
            String label = ResultTable.plain(row.cell(columns.get(SIZE)));
            String key = row.cell(columns.get(KEY));
            List<String> labels = graded.sizes().stream().map(GradedSize::label).toList();
            if (!labels.contains(label)) {
                problem(ResultProblem.Kind.UNKNOWN_SIZE, row.number(), columns.get(SIZE), label,
                        String.join(", ", labels));
                return;
            }
            List<Item> items = Item.of(graded, graded.size(label));
            Optional<Item> item = items.stream().filter(asked -> asked.key().equals(key)).findFirst();
            if (item.isEmpty()) {
                problem(ResultProblem.Kind.UNKNOWN_KEY, row.number(), columns.get(KEY), key,
                        Spelling.nearest(key, items.stream().map(Item::key).toList()));
            } else if (!seen.add(label + "\n" + key)) {
                problem(ResultProblem.Kind.DUPLICATE_ROW, row.number(), columns.get(KEY), key, label);
            } else {
                answer(row, label, item.get());
            }
        }

        private void answer(Grid.Row row, String label, Item item) {
            String text = ResultTable.plain(row.cell(columns.get(ACTUAL)));
            String remark = columns.containsKey(REMARK) ? ResultTable.plain(row.cell(columns.get(REMARK))) : "";
            if (text.isEmpty() && remark.isEmpty()) {
                return;
            }
            boolean isFigure = item.kind() != Item.Kind.WORDS && !text.isEmpty();
            OptionalDouble actual = isFigure ? figure(text, item.kind()) : OptionalDouble.empty();
            if (isFigure && actual.isEmpty()) {
                problem(ResultProblem.Kind.NOT_A_FIGURE, row.number(), columns.get(ACTUAL), text,
                        Words.text("figure." + item.kind().name()));
            } else if (actual.isPresent() && !(actual.getAsDouble() > 0 && actual.getAsDouble() <= MOST)) {
                problem(ResultProblem.Kind.OUT_OF_RANGE, row.number(), columns.get(ACTUAL), text, Figures.plain(MOST));
            } else {
                found.computeIfAbsent(label, none -> new HashMap<>()).put(item.key(),
                        new Answer(label, item, actual, isFigure ? "" : text, remark));
            }
        }

        private List<Answer> inOrder() {
            List<Answer> answers = new ArrayList<>();
            for (GradedSize size : graded.sizes()) {
                Map<String, Answer> ofSize = found.getOrDefault(size.label(), Map.of());
                Item.of(graded, size).stream().map(item -> ofSize.get(item.key())).filter(answer -> answer != null)
                        .forEach(answers::add);
            }
            return answers;
        }

        /** @param column from 0 */
        private void problem(ResultProblem.Kind kind, int row, int column, String text, String detail) {
            problems.add(new ResultProblem(kind, row, row == NOWHERE ? NOWHERE : column + 1, text, detail));
        }
    }

    /** A figure in the unit of its kind; empty when the text is none. */
    private static OptionalDouble figure(String text, Item.Kind kind) {
        Matcher bare = FIGURE.matcher(text);
        if (bare.matches()) {
            double value = Double.parseDouble(bare.group(1).replace(',', '.'));
            boolean halfAStitch = kind == Item.Kind.COUNT && value != Math.rint(value);
            return halfAStitch ? OptionalDouble.empty() : OptionalDouble.of(value);
        }
        boolean isMeasured = kind == Item.Kind.LENGTH || kind == Item.Kind.NEEDLE;
        try {
            return isMeasured && Quantity.parse(text.replaceAll("(?<=\\d),(?=\\d)", ".")) instanceof Length length
                    ? OptionalDouble.of(kind == Item.Kind.LENGTH ? length.mm() / MM_PER_CM : length.mm())
                    : OptionalDouble.empty();
        } catch (IllegalArgumentException noQuantity) {
            return OptionalDouble.empty();
        }
    }
}
