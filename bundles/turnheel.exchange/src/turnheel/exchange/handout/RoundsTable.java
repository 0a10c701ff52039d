package turnheel.exchange.handout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;
import turnheel.exchange.document.Block;

/**
 * The rounds of a technique, a column for each size: a line for every round that changes something, with the stitches
 * after it, and a line for a stretch of flat rows that get shorter, get longer or stay alike. Plain rounds get lines
 * where the technique shapes nothing; else the numbers of the shaped rounds tell how many lie between.
 */
final class RoundsTable {

    /** How the rows of a stretch compare with each other, by the stitches worked. */
    private enum Trend {
        SHORTER, ALIKE, LONGER
    }

    /** Rounds that share a line. */
    private record Stretch(String key, Round first, Round last) {
    }

    private final Graded graded;
    private final Lesson lesson;

    private RoundsTable(Graded graded, Lesson lesson) {
        this.graded = graded;
        this.lesson = lesson;
    }

    /** The table; without rows where no size can be worked. */
    static Block.Table of(Graded graded, Lesson lesson) {
        return new RoundsTable(graded, lesson).table();
    }

    private Block.Table table() {
        List<Map<String, Stretch>> bySize = graded.sizes().stream().map(this::lines).toList();
        List<Block.Row> rows = new ArrayList<>();
        for (String line : merged(bySize)) {
            String label = bySize.stream().map(lines -> lines.get(line)).filter(stretch -> stretch != null).findFirst()
                    .map(stretch -> label(stretch, line, bySize)).orElseThrow();
            rows.add(row(label, bySize, line, RoundsTable::cell));
            if (bySize.stream().flatMap(lines -> Optional.ofNullable(lines.get(line)).stream())
                    .anyMatch(stretch -> isFlat(stretch.first()))) {
                rows.add(row(Words.text("rounds.worked"), bySize, line, RoundsTable::worked));
            }
        }
        boolean flat = bySize.stream().flatMap(lines -> lines.values().stream())
                .anyMatch(stretch -> isFlat(stretch.first()));
        String caption = lesson.topic() == Topic.CLOSING ? ".closing" : flat ? ".flat" : "";
        return new Block.Table(Words.text("rounds.caption" + caption),
                Stream.concat(Stream.of(Words.text("rounds.head")), graded.sizes().stream().map(GradedSize::label))
                        .toList(), rows);
    }

    /** {@code Increase round 3}, or without a number where there is one of its kind only. */
    private static String label(Stretch stretch, String line, List<Map<String, Stretch>> bySize) {
        boolean several = bySize.stream().anyMatch(lines -> lines.containsKey(stretch.key() + " 2"));
        String number = line.substring(line.lastIndexOf(' ') + 1);
        String name = Words.text("rounds." + stretch.key());
        return several ? Words.text("rounds.numbered", name, number) : name;
    }

    /** The lines of all sizes in one order: a line that a size lacks stays where the others have it. */
    private static List<String> merged(List<Map<String, Stretch>> bySize) {
        List<String> order = new ArrayList<>();
        for (Map<String, Stretch> lines : bySize) {
            int at = 0;
            for (String line : lines.keySet()) {
                int known = order.indexOf(line);
                if (known < 0) {
                    order.add(at, line);
                } else {
                    at = known;
                }
                at++;
            }
        }
        return order;
    }

    private static Block.Row row(String label, List<Map<String, Stretch>> bySize, String line,
            Function<Stretch, String> figure) {
        List<Block.Cell> cells = new ArrayList<>(List.of(new Block.Cell.Words(label)));
        bySize.stream().map(lines -> Optional.ofNullable(lines.get(line)))
                .forEach(stretch -> cells.add(stretch.map(figure).<Block.Cell>map(Block.Cell.Figure::new)
                        .orElseGet(Block.Cell.Nothing::new)));
        return new Block.Row(cells);
    }

    /** Stitches worked in the first and the last row. */
    private static String worked(Stretch stretch) {
        return range(takes(stretch.first()), takes(stretch.last()));
    }

    private static String cell(Stretch stretch) {
        Round first = stretch.first();
        Round last = stretch.last();
        if (isFlat(first)) {
            return range(first.number(), last.number());
        }
        String stitches = Integer.toString(isClosing(last) ? takes(last) : last.stitches());
        return first.number() == 0 ? stitches
                : Words.text("rounds.cell", stitches, range(first.number(), last.number()));
    }

    static String range(int from, int to) {
        return from == to ? Integer.toString(from) : from + "–" + to;
    }

    /** The stretches of a size by kind and number of their kind, in order. */
    private Map<String, Stretch> lines(GradedSize size) {
        List<Round> rounds = lesson.rounds(graded, size).stream().map(Lesson.Worked::round).toList();
        boolean shaped = rounds.stream().anyMatch(round -> round.number() > 0 && isShaping(round));
        Map<String, Integer> counted = new HashMap<>();
        return stretches(rounds).stream().filter(stretch -> !(shaped && stretch.first().kind() == RoundKind.PLAIN))
                .collect(Collectors.toMap(
                        stretch -> stretch.key() + " " + counted.merge(stretch.key(), 1, Integer::sum),
                        stretch -> stretch, (one, other) -> one, LinkedHashMap::new));
    }

    private static List<Stretch> stretches(List<Round> rounds) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < rounds.size(); i++) {
            Round round = rounds.get(i);
            String key = isFlat(round) ? round.kind().name() + "." + trend(rounds, i) : key(round);
            boolean goesOn = !stretches.isEmpty() && stretches.getLast().key().equals(key) && !isShaping(round)
                    && round.number() > 0;
            if (goesOn) {
                Stretch before = stretches.removeLast();
                stretches.add(new Stretch(key, before.first(), round));
            } else {
                stretches.add(new Stretch(key, round, round));
            }
        }
        return stretches;
    }

    private static String key(Round round) {
        List<Stitch> stitches = Lessons.stitches(round).distinct().toList();
        if (round.kind() == RoundKind.PLAIN && stitches.equals(List.of(Stitch.PURL))) {
            return "PURL";
        }
        return round.kind() == RoundKind.PLAIN && stitches.equals(List.of(Stitch.KNIT_WITH_EDGE)) ? "JOINING"
                : round.kind().name();
    }

    /** Against the row before of the same kind; the first of a kind goes with the next. */
    private static Trend trend(List<Round> rounds, int at) {
        boolean first = at == 0 || rounds.get(at - 1).kind() != rounds.get(at).kind();
        int before = first ? at : at - 1;
        if (first && (at + 1 == rounds.size() || rounds.get(at + 1).kind() != rounds.get(at).kind())) {
            return Trend.ALIKE;
        }
        int change = takes(rounds.get(before + 1)) - takes(rounds.get(before));
        return change < 0 ? Trend.SHORTER : change > 0 ? Trend.LONGER : Trend.ALIKE;
    }

    /** Whether a flat row is one of those that get shorter towards a centre. */
    static boolean getsShorter(List<Round> rounds, int at) {
        return trend(rounds, at) == Trend.SHORTER;
    }

    /** Whether two flat rows, one after the other, belong to one stretch. */
    static boolean shareALine(List<Round> rounds, int at) {
        return trend(rounds, at) == trend(rounds, at - 1);
    }

    /** After these nothing is left to count; before them there is. */
    static boolean isClosing(Round round) {
        return round.kind() == RoundKind.GRAFT || round.kind() == RoundKind.BIND_OFF;
    }

    /** Loops of the left needle that a round or row works. */
    static int takes(Round round) {
        return round.steps().stream().mapToInt(Step::takes).sum();
    }

    private static boolean isShaping(Round round) {
        return switch (round.kind()) {
            case INCREASE, DECREASE, CAST_ON, SET_UP, PICK_UP, BIND_OFF, GRAFT -> true;
            case PLAIN, RIB, ROW, TURN -> false;
        };
    }

    static boolean isFlat(Round round) {
        return round.kind() == RoundKind.ROW || round.kind() == RoundKind.TURN;
    }
}
