package turnheel.workbench.grid;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import turnheel.engine.design.Role;
import turnheel.engine.grading.Why;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;

/** What a cell says for itself: the queries about it first, then its derivation. */
final class CellReason {

    private CellReason() {
    }

    /** The lines; empty in a heading. */
    static List<String> lines(GridContent content, int column, int row) {
        if (content.parameter(row).isEmpty() || content.size(column).isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        for (Query query : content.queries(column, row)) {
            lines.add(NLS.bind(switch (query.severity()) {
                case ERROR -> Messages.CellReason_error_0;
                case WARNING -> Messages.CellReason_warning_0;
            }, Sentences.of(query)));
        }
        content.why(column, row).map(Why::lines).ifPresentOrElse(lines::addAll, () -> {
            // of an own row the query has said why already
            if (lines.isEmpty() || content.parameter(row).orElseThrow().role() != Role.OWN) {
                lines.add(Messages.CellReason_noValue);
            }
        });
        return lines;
    }
}
