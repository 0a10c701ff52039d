package turnheel.model;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;
import turnheel.model.pattern.EntryElement;
import turnheel.model.pattern.OwnRowElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.SizeElement;

/**
 * New documents, and the edits that more than one place makes. In an editor, run them inside of a recording command, so
 * that they can be undone.
 */
public final class Documents {

    private static final PatternFactory FACTORY = PatternFactory.eINSTANCE;
    private static final List<Key> ORDER = Catalogue.all().stream().map(Parameter::key).toList();

    private Documents() {
    }

    /** A new document that describes the design: {@link Door#design} of it is equal to the design. */
    public static Pattern pattern(Design design) {
        Pattern pattern = FACTORY.createPattern();
        pattern.setTitle(design.title());
        pattern.setDirection(design.direction());
        pattern.setStitchGauge(design.stitchGauge());
        pattern.setRoundGauge(design.roundGauge());
        pattern.setToe(PartElements.toe(design.toe()));
        pattern.setHeel(PartElements.heel(design.heel()));
        pattern.setLeg(PartElements.leg(design.leg()));
        pattern.setCuff(PartElements.cuff(design.cuff()));
        design.stitchPatterns().forEach(stitches -> pattern.getStitchPatterns().add(PartElements.stitchPattern(stitches)));
        if (!design.materials().equals(Materials.UNDECIDED)) {
            pattern.setMaterials(PartElements.materials(design.materials()));
        }
        if (!design.lengths().equals(Lengths.USUAL)) {
            pattern.setLengths(PartElements.lengths(design.lengths()));
        }
        design.sizes().forEach(size -> pattern.getSizes().add(size(size)));
        design.ownRows().forEach(row -> pattern.getOwnRows().add(ownRow(row)));
        return pattern;
    }

    private static SizeElement size(Size size) {
        SizeElement element = FACTORY.createSizeElement();
        element.setId(size.id());
        element.setLabel(size.label());
        size.inputs().forEach((key, quantity) -> setInput(element, key, quantity));
        size.overrides().forEach((key, quantity) -> setOverride(element, key, quantity));
        return element;
    }

    /** A new element for the row, with its formula as it was written. */
    public static OwnRowElement ownRow(OwnRow row) {
        OwnRowElement element = FACTORY.createOwnRowElement();
        element.setKey(row.key());
        if (!row.label().isEmpty()) {
            element.setLabel(row.label());
        }
        element.setFormula(row.formula());
        return element;
    }

    /**
     * An id for a new size: its label in plain letters, with a number where that is taken. The same labels give the
     * same ids, so that the same commands make the same file.
     *
     * @param taken the ids of the other sizes
     */
    public static String sizeId(String label, Collection<String> taken) {
        String plain = label.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String base = plain.isEmpty() ? "size" : plain;
        String id = base;
        for (int number = 2; taken.contains(id); number++) {
            id = base + "-" + number;
        }
        return id;
    }

    /** Sets an input of a size; {@code null} takes it away, so that the default holds again. */
    public static void setInput(SizeElement size, Key key, Quantity quantity) {
        set(size.getInputs(), key, quantity, FACTORY::createInputElement);
    }

    /** Sets an override of a size; {@code null} takes it away, so that the rule holds again. */
    public static void setOverride(SizeElement size, Key key, Quantity quantity) {
        set(size.getOverrides(), key, quantity, FACTORY::createOverrideElement);
    }

    private static <E extends EntryElement> void set(List<E> entries, Key key, Quantity quantity, Supplier<E> maker) {
        for (E entry : entries) {
            if (key.equals(entry.getKey())) {
                if (quantity == null) {
                    entries.remove(entry);
                } else {
                    entry.setValue(quantity);
                }
                return;
            }
        }
        if (quantity != null) {
            E entry = maker.get();
            entry.setKey(key);
            entry.setValue(quantity);
            entries.add(place(entries, key), entry);
        }
    }

    /** Where the key belongs in the order of the catalogue, so that the order of edits does not show in the file. */
    private static int place(List<? extends EntryElement> entries, Key key) {
        int place = entries.size();
        while (place > 0 && ORDER.indexOf(entries.get(place - 1).getKey()) > ORDER.indexOf(key)) {
            place--;
        }
        return place;
    }
}
