package turnheel.workbench.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import turnheel.engine.design.Role;
import turnheel.engine.grading.Why;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;

/** What a cell says for itself, in sentences: what is asked about its number, and why the number is what it is. */
public final class CellReason {

    private CellReason() {
    }

    /** The lines of a cell that the snapshot has. */
    public static List<String> lines(Snapshot snapshot, CellPlace place) {
        List<String> lines = new ArrayList<>();
        for (Query query : snapshot.queries(place.key(), place.size())) {
            lines.add(NLS.bind(switch (query.severity()) {
                case ERROR -> Messages.CellReason_error_0;
                case WARNING -> Messages.CellReason_warning_0;
            }, Sentences.of(query)));
        }
        Optional<Why> why = snapshot.why(place);
        why.map(Why::lines).ifPresent(lines::addAll);
        // of an own row the query has said why already
        if (why.isEmpty() && (lines.isEmpty() || snapshot.graded().parameter(place.key()).role() != Role.OWN)) {
            lines.add(Messages.CellReason_noValue);
        }
        return lines;
    }
}
