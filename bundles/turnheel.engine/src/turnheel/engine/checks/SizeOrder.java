package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.FOOT_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FOOT_IDEAL;
import static turnheel.engine.design.Catalogue.FOOT_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** What holds between a size and the one before it. */
final class SizeOrder {

    /** Two socks a stitch or two apart are one sock; from here on two equal counts are worth a question. */
    private static final double NOTICEABLE_STITCHES = 4;

    private SizeOrder() {
    }

    static List<Query> check(Graded graded) {
        List<Query> queries = new ArrayList<>();
        for (int i = 1; i < graded.sizes().size(); i++) {
            GradedSize before = graded.sizes().get(i - 1);
            GradedSize size = graded.sizes().get(i);
            for (Parameter measurement : List.of(FOOT_LENGTH, FOOT_CIRCUMFERENCE)) {
                if (has(measurement, before, size) && size.value(measurement) < before.value(measurement)) {
                    queries.add(query(Check.MEASUREMENT_ORDER, measurement, before, size));
                }
            }
            if (has(FOOT_STITCHES, before, size) && has(FOOT_IDEAL, before, size) && !clash(graded, before, size)
                    && size.value(FOOT_IDEAL) >= before.value(FOOT_IDEAL)) {
                counts(before, size, queries);
            }
        }
        return queries;
    }

    /** Where two sizes have no counts together, or one none at all, it was said already that theirs do not grow. */
    private static boolean clash(Graded graded, GradedSize before, GradedSize size) {
        List<String> both = List.of(before.label(), size.label());
        return graded.queries().stream().anyMatch(query -> switch (query.check()) {
            case COUNTS_CLASH -> query.sizes().containsAll(both);
            case NEEDS_EXCLUDE, COUNTS_OUT_OF_REACH -> both.stream().anyMatch(query.sizes()::contains);
            default -> false;
        });
    }

    private static void counts(GradedSize before, GradedSize size, List<Query> queries) {
        double more = size.value(FOOT_STITCHES) - before.value(FOOT_STITCHES);
        if (more < 0) {
            queries.add(query(Check.COUNTS_FALL, FOOT_STITCHES, before, size));
        } else if (more == 0 && size.value(FOOT_IDEAL) - before.value(FOOT_IDEAL) >= NOTICEABLE_STITCHES) {
            queries.add(query(Check.COUNTS_EQUAL, FOOT_STITCHES, before, size));
        }
    }

    private static boolean has(Parameter parameter, GradedSize... sizes) {
        return List.of(sizes).stream().allMatch(size -> size.cell(parameter).isPresent());
    }

    private static Query query(Check check, Parameter parameter, GradedSize before, GradedSize size) {
        return new Query(check, parameter.key(), List.of(size.label()), Notation.number(before.value(parameter)),
                Notation.number(size.value(parameter)));
    }
}
