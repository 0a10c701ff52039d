package turnheel.workbench.editor;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Gauge;
import turnheel.model.Literals;
import turnheel.model.pattern.Pattern;
import turnheel.workbench.document.GradedDocument;

/** What the pattern is called, which end comes first, and the gauge that it is knitted at. */
final class IdentitySection extends DocumentSection {

    IdentitySection(Composite parent, IManagedForm form, GradedDocument document) {
        super(parent, form, document, Messages.IdentitySection_title);
        Composite client = client(2);
        line(client, Messages.IdentitySection_patternTitle, Pattern::getTitle, Pattern::setTitle);
        line(client, Messages.IdentitySection_designer, Pattern::getDesigner, Pattern::setDesigner);
        choice(client, Messages.IdentitySection_direction, Direction.class, ChoiceWords::of,
                () -> document.pattern().getDirection(),
                direction -> edit(Messages.IdentitySection_direction, pattern -> pattern.setDirection(direction)));
        gauge(client, Messages.IdentitySection_stitchGauge, Pattern::getStitchGauge, Pattern::setStitchGauge);
        gauge(client, Messages.IdentitySection_roundGauge, Pattern::getRoundGauge, Pattern::setRoundGauge);
    }

    private void line(Composite client, String label, Function<Pattern, String> get, BiConsumer<Pattern, String> set) {
        text(client, label, () -> orEmpty(get.apply(document().pattern())),
                typed -> edit(label, pattern -> set.accept(pattern, typed.isBlank() ? null : typed.strip())));
    }

    private void gauge(Composite client, String label, Function<Pattern, Gauge> get, BiConsumer<Pattern, Gauge> set) {
        text(client, label, () -> orEmpty(get.apply(document().pattern())), typed -> {
            Gauge gauge = gauge(typed);
            edit(label, pattern -> set.accept(pattern, gauge));
        }).setToolTipText(Messages.IdentitySection_gaugeHint);
    }

    /** A gauge, or the reason why it is none in the words of this one field. */
    private static Gauge gauge(String typed) {
        try {
            return Literals.gauge(typed);
        } catch (IllegalArgumentException refused) {
            // With a slash it was meant as a gauge, and what is wrong with it is worth saying.
            throw typed.indexOf('/') >= 0 ? refused
                    : new IllegalArgumentException(NLS.bind(Messages.IdentitySection_noGauge_0, typed), refused);
        }
    }

    private void edit(String label, Consumer<Pattern> change) {
        document().edit(NLS.bind(Messages.OverviewPage_change_0, label), () -> change.accept(document().pattern()));
    }

    private static String orEmpty(Object value) {
        return value == null ? "" : value.toString(); //$NON-NLS-1$
    }
}
