package turnheel.workbench.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.design.Size;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Why;
import turnheel.model.Documents;
import turnheel.model.pattern.SizeElement;
import turnheel.workbench.document.GradedDocument;
import turnheel.workbench.document.Typed;

/** What typing and deleting do to the document, each as one undoable step. */
final class GridEdits {

    /** A cell by its column and row in the content. */
    record Place(int column, int row) {
    }

    private record Entry(SizeElement size, Parameter parameter) {
    }

    private final GradedDocument document;
    private final GridContent content;

    GridEdits(GradedDocument document, GridContent content) {
        this.document = document;
        this.content = content;
    }

    /** Whether a value can be typed here: into inputs and rules, not into results, own rows and headings. */
    boolean isEditable(Place place) {
        return entry(place).map(entry -> entry.parameter().role())
                .filter(role -> role == Role.INPUT || role == Role.RULE).isPresent();
    }

    /** Why nothing can be typed here, for the person who tried; empty where it can, and in headings. */
    Optional<String> refusal(Place place) {
        if (isEditable(place) || content.parameter(place.row()).isEmpty()) {
            return Optional.empty();
        }
        String label = content.rows().get(place.row()).label();
        if (content.parameter(place.row()).orElseThrow().role() == Role.OWN) {
            return Optional.of(NLS.bind(Messages.GridEdits_own_0, label));
        }
        List<String> rules = content.why(place.column(), place.row()).map(Why::basis).orElse(List.of()).stream()
                .map(content::label).toList();
        return Optional.of(rules.isEmpty() ? NLS.bind(Messages.GridEdits_result_0, label)
                : NLS.bind(Messages.GridEdits_result_0_1, label, String.join(", ", rules))); //$NON-NLS-1$
    }

    /**
     * The quantity that a text means in this place.
     *
     * @throws IllegalArgumentException when it means none that can stand here; the message names row and size and says
     *     what would do
     */
    Quantity quantity(Place place, String text) {
        Parameter parameter = content.parameter(place.row()).orElseThrow();
        try {
            return Typed.quantity(parameter, text);
        } catch (IllegalArgumentException refused) {
            String size = content.size(place.column()).orElseThrow().label();
            throw new IllegalArgumentException(NLS.bind(Messages.GridEdits_refused_0_1_2,
                    new Object[] { parameter.label(), size, refused.getMessage() }), refused);
        }
    }

    /** Makes the quantity the input or the override of this place. */
    void set(Place place, Quantity quantity) {
        Entry entry = entry(place).orElseThrow();
        String label = NLS.bind(Messages.GridEdits_set_0_1, entry.parameter().label(), entry.size().getLabel());
        document.edit(label, () -> put(entry, quantity));
    }

    /**
     * Takes the entries of these places away, so that default and rule hold again.
     *
     * @return how many there were
     */
    int drop(List<Place> places) {
        List<Entry> entries = new ArrayList<>();
        for (Place place : places) {
            content.kind(place.column(), place.row()).filter(CellKind::isEntry).flatMap(kind -> entry(place))
                    .ifPresent(entries::add);
        }
        if (!entries.isEmpty()) {
            Entry first = entries.getFirst();
            String label = entries.size() == 1
                    ? NLS.bind(Messages.GridEdits_drop_0_1, first.parameter().label(), first.size().getLabel())
                    : NLS.bind(Messages.GridEdits_dropMany_0, entries.size());
            document.edit(label, () -> entries.forEach(entry -> put(entry, null)));
        }
        return entries.size();
    }

    private static void put(Entry entry, Quantity quantityOrNull) {
        if (entry.parameter().role() == Role.INPUT) {
            Documents.setInput(entry.size(), entry.parameter().key(), quantityOrNull);
        } else {
            Documents.setOverride(entry.size(), entry.parameter().key(), quantityOrNull);
        }
    }

    /** Where the place is in the document; empty in headings, and for a size that the document no longer has. */
    private Optional<Entry> entry(Place place) {
        Optional<SizeElement> size = content.size(place.column()).map(GradedSize::size).flatMap(this::element);
        return content.parameter(place.row()).flatMap(parameter -> size.map(element -> new Entry(element, parameter)));
    }

    private Optional<SizeElement> element(Size size) {
        return document.pattern().getSizes().stream().filter(element -> size.id().equals(element.getId())).findFirst();
    }
}
