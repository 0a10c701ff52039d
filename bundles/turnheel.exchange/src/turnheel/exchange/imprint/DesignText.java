package turnheel.exchange.imprint;

import java.util.Map;
import java.util.TreeMap;

import turnheel.engine.design.Design;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;

/**
 * The one canonical text of a design: everything that a designer decided, a line each, keys in the order of the
 * alphabet, quantities as written, parts as their records print. Two designs have the same text exactly when nobody
 * could tell them apart; the sizes' inner ids, which nobody sees, are not in it.
 */
final class DesignText {

    /** Changes when the text of one and the same design changes, so that no old hash is taken for a new one. */
    private static final String FORM = "turnheel-design/6";

    private final StringBuilder text = new StringBuilder();

    private DesignText() {
    }

    static String of(Design design) {
        DesignText made = new DesignText();
        made.line(FORM);
        made.line("title " + quoted(design.title()));
        made.line("direction " + design.direction());
        made.line("gauge.stitches " + design.stitchGauge());
        made.line("gauge.rounds " + design.roundGauge());
        made.line("toe " + design.toe());
        made.line("heel " + design.heel());
        made.line("leg " + design.leg());
        made.line("cuff " + design.cuff());
        // In quotes, since its rows are a person's text.
        design.stitchPatterns().forEach(pattern -> made.line("stitch pattern " + quoted(pattern.toString())));
        // In quotes, since a yarn's name is a person's text.
        made.line("materials " + quoted(design.materials().toString()));
        made.line("lengths " + design.lengths());
        design.sizes().forEach(made::size);
        design.ownRows().forEach(row -> made.line("own row " + row.key() + " " + quoted(row.label()) + " "
                + quoted(row.formula())));
        return made.text.toString();
    }

    private void size(Size size) {
        line("size " + quoted(size.label()));
        quantities("input", size.inputs());
        quantities("override", size.overrides());
    }

    private void quantities(String role, Map<Key, Quantity> quantities) {
        new TreeMap<>(quantities).forEach((key, quantity) -> line("  " + role + " " + key + " " + quantity));
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    /** In quotes, with everything escaped that could end the quotes or the line. */
    private static String quoted(String value) {
        StringBuilder quoted = new StringBuilder("\"");
        value.chars().forEach(c -> {
            if (c == '"' || c == '\\' || c < ' ') {
                quoted.append("\\u%04x".formatted(c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.append('"').toString();
    }
}
