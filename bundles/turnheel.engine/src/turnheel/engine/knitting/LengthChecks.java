package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Line.Goal;
import turnheel.engine.instruction.Line.MeasuredPart;
import turnheel.engine.instruction.Sized;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** Lengths to knit up to, against the rounds that the same line tells and those already worked. */
final class LengthChecks {

    private static final double MM_PER_CM = 10;
    private static final double MM_PER_EIGHTH = 25.4 / 8;

    private final List<Told> told;
    private final List<String> sizes;
    private final Worked worked;
    private final double roundMm;
    private final boolean toeUp;
    private final List<Query> queries = new ArrayList<>();

    /** @param roundMm the height of a round; NaN where the text does not give it */
    LengthChecks(List<Told> told, List<String> sizes, Worked worked, double roundMm, boolean toeUp) {
        this.told = told;
        this.sizes = sizes;
        this.worked = worked;
        this.roundMm = roundMm;
        this.toeUp = toeUp;
    }

    List<Query> queries() {
        for (int place = 0; place < told.size(); place++) {
            if (told.get(place).line() instanceof Line.Even even && even.goal().isPresent()
                    && even.goal().get() instanceof Goal.Measures measures) {
                check(even, measures, place);
            }
        }
        return queries;
    }

    private void check(Line.Even even, Goal.Measures measures, int place) {
        List<String> differing = new ArrayList<>();
        List<String> impossible = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        List<String> found = new ArrayList<>();
        boolean fromToe = measures.part() == MeasuredPart.FOOT && toeUp;
        for (int size = 0; size < sizes.size(); size++) {
            Optional<Double> length = measures.lengthMm().get(size);
            Optional<Integer> rounds = even.rounds().flatMap(each(size));
            if (length.isEmpty() || !(even.onlySizes().isEmpty() || even.onlySizes().contains(size))) {
                continue;
            }
            double before = worked.roundsBefore(size, place, !fromToe) * roundMm;
            // a foot is measured from a place before its section, and the gauge is not that of the cuff's fabric
            boolean other = isFoot(measures) || measures.part() == MeasuredPart.CUFF;
            double since = measures.part() == MeasuredPart.PIECE ? 0 : before;
            double whole = other ? Double.NaN : since + rounds.orElse(0) * roundMm;
            if (rounds.isPresent() && Math.abs(whole - length.get()) > tolerance(length.get())) {
                differing.add(sizes.get(size));
                expected.add(cm(whole));
                found.add(cm(length.get()));
            } else if (rounds.isEmpty() && (fromToe || !isFoot(measures)) && before > length.get() + roundMm) {
                impossible.add(sizes.get(size));
            }
        }
        if (!differing.isEmpty()) {
            queries.add(new Query(Check.TEXT_LENGTH, told.get(place).work().place(), differing, String.join(", ", expected),
                    String.join(", ", found), ""));
        }
        if (!impossible.isEmpty()) {
            queries.add(new Query(Check.TEXT_LENGTH_IMPOSSIBLE, told.get(place).work().place(), impossible, "", "", ""));
        }
    }

    private static Function<Sized<Integer>, Optional<Integer>> each(int size) {
        return sized -> sized.get(size);
    }

    private static boolean isFoot(Goal.Measures measures) {
        return measures.part() == MeasuredPart.FOOT;
    }

    /** Printed to an eighth or a quarter of an inch, to half a centimetre, or to a millimetre. */
    private static double tolerance(double mm) {
        return isMultiple(mm, MM_PER_EIGHTH) ? MM_PER_EIGHTH : isMultiple(mm, MM_PER_CM / 2) ? 2.6 : 0.7;
    }

    private static boolean isMultiple(double mm, double step) {
        return Math.abs(mm / step - Math.rint(mm / step)) < 1e-6;
    }

    private static String cm(double mm) {
        return Double.toString(Math.rint(mm) / MM_PER_CM).replaceFirst("\\.0$", "");
    }
}
