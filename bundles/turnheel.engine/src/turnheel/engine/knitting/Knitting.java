package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.query.Query;
import turnheel.engine.stitch.Stitch;

/** Knits the lines of a pattern in every size. */
public final class Knitting {

    private final List<List<Traced>> traces;
    private final List<Query> queries;

    private Knitting(List<List<Traced>> traces, List<Query> queries) {
        this.traces = traces;
        this.queries = queries;
    }

    /** Lines that were not read from a text: the place of a query is the line's place among them, from 1. */
    public static Knitted lines(List<Line> lines, List<String> sizes) {
        List<Told> told = new ArrayList<>();
        for (Line line : lines) {
            Span place = new Span(told.size(), 0, 0);
            told.add(new Told(line, true, place, Optional.of(place)));
        }
        Knitting knitting = of(told, sizes);
        return new Knitted(knitting.traces, knitting.queries);
    }

    static Knitting of(List<Told> told, List<String> sizes) {
        List<Task> tasks = told.stream().map(Told::task).toList();
        boolean[] closes = closesYarnOvers(tasks);
        List<SizeKnitter> knitters = new ArrayList<>();
        List<List<Traced>> traces = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            SizeKnitter knitter = SizeKnitter.knit(tasks, closes, size);
            knitters.add(knitter);
            traces.add(knitter.trace());
        }
        return new Knitting(traces, new Findings(told, sizes).queries(knitters));
    }

    List<List<Traced>> traces() {
        return traces;
    }

    List<Query> queries() {
        return queries;
    }

    /** A section closes yarn-overs where it has both them and stitches through the back; in lace they stay open. */
    private static boolean[] closesYarnOvers(List<Task> tasks) {
        boolean[] closes = new boolean[tasks.size()];
        int first = 0;
        for (int place = 0; place <= tasks.size(); place++) {
            if (place == tasks.size() || tasks.get(place).line() instanceof Line.Section) {
                List<Line> section = tasks.subList(first, place).stream().map(Task::line).toList();
                boolean close = has(section, Stitch.YARN_OVER) && has(section, Stitch.KNIT_THROUGH_BACK);
                for (int in = first; in < place; in++) {
                    closes[in] = close;
                }
                first = place;
            }
        }
        return closes;
    }

    private static boolean has(List<Line> lines, Stitch stitch) {
        return lines.stream().anyMatch(line -> line instanceof Line.Worked worked && hasIn(worked.instructions(), stitch));
    }

    private static boolean hasIn(List<Instruction> instructions, Stitch stitch) {
        return instructions.stream().anyMatch(instruction -> hasIn(instruction.body(), stitch)
                || instruction instanceof Instruction.Work work && work.stitch() == stitch
                || instruction instanceof Instruction.WorkTo work && work.stitch() == stitch);
    }
}
