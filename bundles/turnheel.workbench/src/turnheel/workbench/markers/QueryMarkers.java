package turnheel.workbench.markers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.osgi.util.NLS;

import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.term.Key;
import turnheel.model.DocumentProblem;
import turnheel.workbench.document.Snapshot;

/** Writes what must be looked at in a pattern file as problem markers, and reads the place of one back. */
public final class QueryMarkers {

    /** A query about numbers of the pattern. */
    public static final String QUERY = "turnheel.workbench.query"; //$NON-NLS-1$
    /** A place at which the file cannot be read. */
    public static final String DAMAGE = "turnheel.workbench.damage"; //$NON-NLS-1$

    private static final String KEY = "key"; //$NON-NLS-1$
    private static final String SIZE = "size"; //$NON-NLS-1$
    private static final String CHECK = "check"; //$NON-NLS-1$

    /** The cell that a marker is about; {@code size} is the first of those concerned, or empty. */
    public record Place(Key key, String size) {
    }

    private record Mark(String type, Map<String, Object> attributes) {
    }

    private QueryMarkers() {
    }

    /** Replaces the markers of the file by those of this snapshot, in the background. */
    public static void update(IFile file, Snapshot snapshot) {
        replace(file, snapshot.queries().stream().map(query -> mark(query, snapshot)).toList());
    }

    /** Replaces the markers of the file by these places at which it cannot be read, in the background. */
    public static void update(IFile file, List<DocumentProblem> damage) {
        replace(file, damage.stream().map(QueryMarkers::mark).toList());
    }

    /** The cell that the marker is about; empty when it is about none. */
    public static Optional<Place> place(IMarker marker) {
        String key = marker.getAttribute(KEY, ""); //$NON-NLS-1$
        return key.isEmpty() ? Optional.empty()
                : Optional.of(new Place(new Key(key), marker.getAttribute(SIZE, ""))); //$NON-NLS-1$
    }

    private static Mark mark(Query query, Snapshot snapshot) {
        String sizes = String.join(", ", query.sizes()); //$NON-NLS-1$
        String label = snapshot.graded().parameter(query.key()).label();
        Map<String, Object> attributes = new HashMap<>();
        attributes.put(IMarker.MESSAGE, sizes.isEmpty() ? Sentences.of(query)
                : NLS.bind(Messages.QueryMarkers_message_0_1, sizes, Sentences.of(query)));
        attributes.put(IMarker.LOCATION, sizes.isEmpty() ? label
                : NLS.bind(Messages.QueryMarkers_location_0_1, label, sizes));
        attributes.put(IMarker.SEVERITY, switch (query.severity()) {
            case ERROR -> IMarker.SEVERITY_ERROR;
            case WARNING -> IMarker.SEVERITY_WARNING;
        });
        attributes.put(KEY, query.key().name());
        attributes.put(SIZE, query.sizes().isEmpty() ? "" : query.sizes().getFirst()); //$NON-NLS-1$
        attributes.put(CHECK, query.check().id());
        return new Mark(QUERY, attributes);
    }

    private static Mark mark(DocumentProblem problem) {
        Map<String, Object> attributes = new HashMap<>();
        attributes.put(IMarker.MESSAGE, problem.sentence());
        attributes.put(IMarker.SEVERITY, IMarker.SEVERITY_ERROR);
        if (problem.line() > 0) {
            attributes.put(IMarker.LINE_NUMBER, problem.line());
            attributes.put(IMarker.LOCATION,
                    NLS.bind(Messages.QueryMarkers_line_0_1, problem.line(), problem.column()));
        }
        return new Mark(DAMAGE, attributes);
    }

    private static void replace(IFile file, List<Mark> marks) {
        WorkspaceJob job = new WorkspaceJob(NLS.bind(Messages.QueryMarkers_job_0, file.getName())) {
            @Override
            public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
                if (file.exists() && !marks.equals(present(file))) {
                    file.deleteMarkers(QUERY, true, IResource.DEPTH_ZERO);
                    file.deleteMarkers(DAMAGE, true, IResource.DEPTH_ZERO);
                    for (Mark mark : marks) {
                        file.createMarker(mark.type(), mark.attributes());
                    }
                }
                return Status.OK_STATUS;
            }
        };
        job.setRule(file.getWorkspace().getRuleFactory().markerRule(file));
        job.setSystem(true);
        job.schedule();
    }

    /** Markers as they are, in the order in which they were made: those that stay right are left alone. */
    private static List<Mark> present(IFile file) throws CoreException {
        List<IMarker> markers = new ArrayList<>();
        markers.addAll(List.of(file.findMarkers(QUERY, true, IResource.DEPTH_ZERO)));
        markers.addAll(List.of(file.findMarkers(DAMAGE, true, IResource.DEPTH_ZERO)));
        markers.sort((one, other) -> Long.compare(one.getId(), other.getId()));
        List<Mark> present = new ArrayList<>();
        for (IMarker marker : markers) {
            present.add(new Mark(marker.getType(), marker.getAttributes()));
        }
        return present;
    }
}
