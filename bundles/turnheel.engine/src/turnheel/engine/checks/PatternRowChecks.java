package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.FOOT_PANEL;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.PatternWidths;
import turnheel.engine.knitting.PatternRows;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** The rows of stitch patterns, worked over the stitches that every size has for them. */
final class PatternRowChecks {

    private PatternRowChecks() {
    }

    static List<Query> check(Graded graded) {
        List<Query> queries = new ArrayList<>();
        for (StitchPattern pattern : graded.design().stitchPatterns()) {
            if (!pattern.instructions().isEmpty()) {
                // read once: the words are the same in every size
                PatternRows rows = PatternRows.read(pattern.instructions());
                graded.sizes().forEach(size -> queries.addAll(check(pattern, rows, size)));
            }
        }
        return queries;
    }

    private static List<Query> check(StitchPattern pattern, PatternRows rows, GradedSize size) {
        Findings findings = new Findings(size.label());
        if (pattern.zone() != Zone.LEG) {
            PatternWidths.instep(pattern, size).ifPresent(stitches -> over(rows, FOOT_PANEL, stitches, findings));
        }
        if (pattern.zone() != Zone.INSTEP) {
            PatternWidths.leg(pattern, size).ifPresent(stitches -> over(rows, LEG_STITCHES, stitches, findings));
        }
        return findings.queries();
    }

    private static void over(PatternRows rows, Parameter parameter, int stitches, Findings findings) {
        switch (rows.over(stitches)) {
            case PatternRows.Worked worked -> { }
            case PatternRows.Unread(var row) -> findings.add(Check.ROW_UNREAD, parameter, "", Integer.toString(row));
            case PatternRows.Misfit(var row, var there, var worked) ->
                findings.add(Check.ROW_MISFIT, parameter, Integer.toString(there), row + ": " + worked);
            case PatternRows.NotReturning(var before, var after) -> findings.add(Check.ROWS_DO_NOT_RETURN, parameter,
                    Integer.toString(before), Integer.toString(after));
        }
    }
}
