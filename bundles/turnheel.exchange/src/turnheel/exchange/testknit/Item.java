package turnheel.exchange.testknit;

import static turnheel.engine.design.Catalogue.CUFF_HEIGHT;
import static turnheel.engine.design.Catalogue.CUFF_ROUNDS;
import static turnheel.engine.design.Catalogue.CUFF_STITCHES;
import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FINISHED_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_AFTER_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_HEIGHT;
import static turnheel.engine.design.Catalogue.HEEL_ROWS;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_WIDEST;
import static turnheel.engine.design.Catalogue.LEG_MEASURE;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.NEEDLE;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;
import static turnheel.engine.design.Catalogue.TOE_ROUNDS;
import static turnheel.engine.design.Catalogue.YARN_SOCK_GRAMS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/**
 * One thing that a test knitter is asked for, in one size.
 *
 * @param key stable: files and scripts name it
 * @param kind what its figures are
 * @param label what people read
 * @param predicted what the pattern says, in the unit of {@link Kind#unit}; empty where it says nothing
 */
public record Item(String key, Kind kind, String label, OptionalDouble predicted) {

    /** What the figures of an item are. */
    public enum Kind {
        GAUGE, NEEDLE, COUNT, LENGTH, GRAMS, HOURS,
        /** Words, not a figure. */
        WORDS;

        /** The unit of its figures in files; empty where a bare number says it all. */
        public String unit() {
            return switch (this) {
                case GAUGE -> "per 10 cm";
                case NEEDLE -> "mm";
                case LENGTH -> "cm";
                case GRAMS -> "g";
                case HOURS -> "h";
                case COUNT, WORDS -> "";
            };
        }
    }

    private static final double MM_PER_CM = 10;

    private static final List<Parameter> GAUGES = List.of(GAUGE_STITCHES, GAUGE_ROUNDS);
    private static final List<Parameter> COUNTS = List.of(TOE_ROUNDS, FOOT_STITCHES, FOOT_ROUNDS, HEEL_STITCHES,
            HEEL_ROWS, HEEL_WIDEST, HEEL_AFTER_PICK_UP, LEG_STITCHES, LEG_ROUNDS, CUFF_STITCHES, CUFF_ROUNDS);
    private static final List<Parameter> LENGTHS = List.of(FINISHED_LENGTH, FINISHED_CIRCUMFERENCE, TOE_DEPTH,
            HEEL_HEIGHT, LEG_MEASURE, CUFF_HEIGHT);

    /** What is asked for in a size, in the order of the sheet; what the pattern has no row for is left out. */
    static List<Item> of(Graded graded, GradedSize size) {
        List<Item> items = new ArrayList<>();
        add(Kind.GAUGE, GAUGES, graded, size, items);
        items.add(of(NEEDLE, Kind.NEEDLE, size));
        add(Kind.COUNT, COUNTS, graded, size, items);
        add(Kind.LENGTH, LENGTHS, graded, size, items);
        items.add(of(YARN_SOCK_GRAMS, Kind.GRAMS, size));
        items.add(own("hours", Kind.HOURS));
        items.add(own("fit", Kind.WORDS));
        items.add(own("remarks", Kind.WORDS));
        return items;
    }

    private static void add(Kind kind, List<Parameter> parameters, Graded graded, GradedSize size, List<Item> items) {
        parameters.stream().filter(parameter -> graded.parameters().contains(parameter))
                .forEach(parameter -> items.add(of(parameter, kind, size)));
    }

    private static Item of(Parameter parameter, Kind kind, GradedSize size) {
        Optional<Double> value = size.cell(parameter).map(Cell::value);
        OptionalDouble predicted = value.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(kind == Kind.LENGTH ? value.get() / MM_PER_CM : value.get());
        return new Item(parameter.key().name(), kind, parameter.label(), predicted);
    }

    private static Item own(String name, Kind kind) {
        return new Item("testKnit." + name, kind, Words.text("item." + name), OptionalDouble.empty());
    }

    /** Whether it is the same thing as a parameter of the catalogue. */
    boolean is(Parameter parameter) {
        return key.equals(parameter.key().name());
    }
}
