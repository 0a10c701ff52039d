package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

import turnheel.engine.query.Query;
import turnheel.engine.query.Severity;

/** What the sizes found, as queries: one for a slip, however many sizes stumble over it. */
final class Findings {

    /** A finding of one size. */
    private record Of(int size, Finding finding) {
    }

    private final List<Told> told;
    private final List<String> sizes;

    Findings(List<Told> told, List<String> sizes) {
        this.told = told;
        this.sizes = sizes;
    }

    /** @param knitters one for each size */
    List<Query> queries(List<SizeKnitter> knitters) {
        Map<Integer, List<Of>> byLine = new TreeMap<>();
        for (int size = 0; size < knitters.size(); size++) {
            for (Finding finding : knitters.get(size).findings()) {
                int line = finding.line();
                List<Of> there = byLine.computeIfAbsent(line, absent -> new ArrayList<>());
                int same = size;
                // a hole is told only where nothing worse is
                boolean error = finding.check().severity() == Severity.ERROR;
                if (error && there.removeIf(of -> of.size() == same && of.finding().check().severity() == Severity.WARNING)
                        || there.stream().noneMatch(of -> of.size() == same)) {
                    there.add(new Of(size, finding));
                }
            }
        }
        List<List<Of>> slips = new ArrayList<>();
        for (List<Of> there : byLine.values()) {
            List<Of> own = new ArrayList<>();
            for (Of of : there) {
                if (slips.isEmpty() || !stemsFrom(slips.getLast(), of, knitters.get(of.size()))) {
                    own.add(of);
                } else {
                    slips.getLast().add(of);
                }
            }
            if (!own.isEmpty()) {
                slips.add(own);
            }
        }
        return slips.stream().map(this::query).toList();
    }

    /** A slip that other sizes found earlier shows in this size only here, when no count was stated in between. */
    private static boolean stemsFrom(List<Of> slip, Of of, SizeKnitter knitter) {
        int earlier = slip.getFirst().finding().line();
        int checked = knitter.agreed().nextSetBit(earlier);
        boolean unchecked = checked < 0 || checked >= of.finding().line();
        return unchecked && earlier < of.finding().line() && slip.stream().noneMatch(other -> other.size() == of.size());
    }

    private Query query(List<Of> slip) {
        Finding first = slip.getFirst().finding();
        Told line = told.get(first.line());
        List<Of> inOrder = slip.stream().sorted((one, other) -> Integer.compare(one.size(), other.size())).toList();
        Span span = first.atStated() ? line.stated().orElse(line.work()) : line.work();
        return new Query(first.check(), span.place(), inOrder.stream().map(of -> sizes.get(of.size())).toList(),
                values(inOrder, Finding::expected), values(inOrder, Finding::found), values(inOrder, Finding::correction));
    }

    /** One value where all agree, else one for each size. */
    private static String values(List<Of> slip, Function<Finding, String> value) {
        List<String> values = slip.stream().map(of -> value.apply(of.finding())).toList();
        boolean missing = values.contains("");
        return missing ? "" : values.stream().distinct().count() == 1 ? values.getFirst() : String.join(", ", values);
    }
}
