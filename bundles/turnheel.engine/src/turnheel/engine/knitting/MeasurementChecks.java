package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

import turnheel.engine.knitting.Layout.Paragraph;
import turnheel.engine.knitting.Layout.Role;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** What the measurements of a text say against each other and against what was knitted. */
final class MeasurementChecks {

    /** Inches are read off a tape to an eighth, so a pair may differ by that beside what each is rounded to. */
    private static final double READ_OFF_MM = 1;

    /** A length adds up parts that are each rounded to whole rounds; common practice. */
    private static final double WHOLE_FOOT_MM = 8;

    private final List<String> sizes;
    private final ReadingWords table;
    private final Worked worked;
    private final Optional<WrittenGauge> gauge;
    private final List<Query> queries = new ArrayList<>();

    MeasurementChecks(List<String> sizes, ReadingWords table, List<Paragraph> paragraphs, Worked worked) {
        this.sizes = sizes;
        this.table = table;
        this.worked = worked;
        this.gauge = WrittenGauge.in(paragraphs, table);
    }

    List<Query> of(List<Paragraph> paragraphs) {
        for (Paragraph paragraph : paragraphs) {
            List<Measured> lists = Measured.in(paragraph.words(), table);
            boolean stated = paragraph.role() == Role.FRONT;
            boolean finished = stated && isIn("finished", paragraph.section().toLowerCase(Locale.ROOT));
            for (int i = 0; i < lists.size(); i++) {
                Measured list = lists.get(i);
                if (!list.fits(sizes.size())) {
                    continue;
                }
                if (list.pairs() && i > 0 && lists.get(i - 1).fits(sizes.size())) {
                    pair(lists.get(i - 1), list);
                } else if (stated && !grows(list)) {
                    continue;
                } else if (finished && list.isLength()) {
                    finished(list, paragraph.section().toLowerCase(Locale.ROOT) + " " + list.name());
                }
            }
        }
        return queries;
    }

    private boolean isIn(String list, String words) {
        return table.list(list).stream().anyMatch(words::contains);
    }

    private void pair(Measured one, Measured other) {
        if (one.isLength() && other.isLength() && !one.unit().equals(other.unit())) {
            double tolerance = one.halfStepMm() + other.halfStepMm() + READ_OFF_MM;
            differ(Check.TEXT_UNITS, other, size -> one.mm(size), tolerance);
        }
    }

    private boolean grows(Measured list) {
        List<Integer> falling = new ArrayList<>();
        for (int size = 1; size < list.values().size(); size++) {
            if (list.values().get(size) < list.values().get(size - 1)) {
                falling.add(size);
            }
        }
        if (!falling.isEmpty()) {
            int size = falling.getFirst();
            queries.add(new Query(list.isLength() ? Check.TEXT_SIZES_ORDER : Check.TEXT_YARN, list.span().place(),
                    falling.stream().map(sizes::get).toList(), Double.toString(list.values().get(size - 1)),
                    Double.toString(list.values().get(size)), ""));
        }
        return falling.isEmpty();
    }

    private void finished(Measured list, String name) {
        if (gauge.isEmpty() || isIn("not-foot", name)) {
            return;
        }
        WrittenGauge given = gauge.get();
        if (isIn("circumference", name)) {
            String part = isIn("part-leg", name) ? "part-leg" : "part-foot";
            differ(Check.TEXT_CIRCUMFERENCE, list, size -> worked.stitches(part, size) * given.stitchMm(),
                    list.halfStepMm() + READ_OFF_MM / 10);
        } else if (isIn("length", name)) {
            differ(Check.TEXT_LENGTH, list, size -> worked.footRounds(size) * given.roundMm(),
                    list.halfStepMm() + WHOLE_FOOT_MM);
        }
    }

    /** @param expected for each size, in mm; NaN where nothing is known */
    private void differ(Check check, Measured list, IntToDoubleFunction expected, double toleranceMm) {
        List<String> concerned = new ArrayList<>();
        List<String> wanted = new ArrayList<>();
        List<String> found = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            double mm = expected.applyAsDouble(size);
            if (Math.abs(mm - list.mm(size)) > toleranceMm) {
                concerned.add(sizes.get(size));
                wanted.add(list.written(mm));
                found.add(list.written(list.mm(size)));
            }
        }
        if (!concerned.isEmpty()) {
            queries.add(new Query(check, list.span().place(), concerned, String.join(", ", wanted), String.join(", ", found), ""));
        }
    }
}
