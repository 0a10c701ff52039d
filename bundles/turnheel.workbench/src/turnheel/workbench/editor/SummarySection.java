package turnheel.workbench.editor;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.action.LegacyActionTools;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.widgets.Hyperlink;

import turnheel.engine.design.Catalogue;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.query.Severity;
import turnheel.engine.term.Notation;
import turnheel.workbench.document.GradedDocument;
import turnheel.workbench.document.Snapshot;

/** What the pattern comes to at the moment, and what must be looked at, each query one click away from its cell. */
final class SummarySection extends DocumentSection {

    private static final int MOST_QUERIES = 6;

    private final Consumer<Query> show;
    private final Composite client;

    /** @param show goes to the cell that a query is about */
    SummarySection(Composite parent, IManagedForm form, GradedDocument document, Consumer<Query> show) {
        super(parent, form, document, Messages.SummarySection_title);
        this.show = show;
        client = client(1);
        write();
    }

    @Override
    public void refresh() {
        super.refresh();
        for (Control control : client.getChildren()) {
            control.dispose();
        }
        write();
        getManagedForm().reflow(true);
    }

    private void write() {
        document().snapshot().ifPresentOrElse(this::write, () -> line(Messages.SummarySection_nothing));
    }

    private void write(Snapshot snapshot) {
        line(sizes(snapshot.graded()));
        List<Query> queries = snapshot.queries();
        line(queries.isEmpty() ? Messages.SummarySection_noQueries
                : NLS.bind(Messages.SummarySection_queries_0_1, snapshot.count(Severity.ERROR),
                        snapshot.count(Severity.WARNING)));
        queries.stream().limit(MOST_QUERIES).forEach(this::link);
        if (queries.size() > MOST_QUERIES) {
            line(NLS.bind(Messages.SummarySection_more_0, queries.size() - MOST_QUERIES));
        }
    }

    private static String sizes(Graded graded) {
        String first = graded.sizes().getFirst().label();
        String last = graded.sizes().getLast().label();
        List<Double> counts = graded.sizes().stream().flatMap(size -> size.cell(Catalogue.FOOT_STITCHES).stream())
                .map(cell -> cell.value()).sorted().toList();
        return counts.isEmpty()
                ? NLS.bind(Messages.SummarySection_sizes_0_1_2, new Object[] { graded.sizes().size(), first, last })
                : NLS.bind(Messages.SummarySection_sizes_0_1_2_3_4, new Object[] { graded.sizes().size(), first, last,
                        Notation.number(counts.getFirst()), Notation.number(counts.getLast()) });
    }

    private void line(String text) {
        Label label = toolkit().createLabel(client, LegacyActionTools.escapeMnemonics(text), SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(label);
    }

    private void link(Query query) {
        String text = NLS.bind(switch (query.severity()) {
            case ERROR -> Messages.SummarySection_error_0_1;
            case WARNING -> Messages.SummarySection_warning_0_1;
        }, String.join(", ", query.sizes()), Sentences.of(query)); //$NON-NLS-1$
        Hyperlink link = toolkit().createHyperlink(client, text, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(link);
        link.addHyperlinkListener(IHyperlinkListener.linkActivatedAdapter(event -> show.accept(query)));
    }
}
