package turnheel.exchange.sizes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import turnheel.engine.design.Length;
import turnheel.engine.design.Quantity;
import turnheel.engine.term.Notation;

/** A size of shoes: a number in a system. */
public record ShoeSize(ShoeSystem system, double number) {

    private static final double SHORTEST_FOOT = 80;
    private static final double LONGEST_FOOT = 360;

    /**
     * The length of the foot that a text stands for, in mm: {@code EU 38}, {@code UK 5 1/2}, {@code US women 8}, or
     * the length itself, {@code 245 mm}.
     *
     * @throws IllegalArgumentException when it stands for none; the message says what would do
     */
    public static double footLengthMm(String text) {
        double length = size(text).map(size -> size.system.footLengthMm(size.number)).or(() -> measured(text))
                .orElseThrow(() -> new IllegalArgumentException(Words.text("shoe.unreadable", text,
                        String.join(", ", Stream.of(ShoeSystem.values()).map(ShoeSystem::title).toList()))));
        if (length < SHORTEST_FOOT || length > LONGEST_FOOT) {
            throw new IllegalArgumentException(Words.text("shoe.outOfRange", text));
        }
        return length;
    }

    /** The shoe size that a text is, where it is one of a system that there is. */
    private static Optional<ShoeSize> size(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return Stream.of(ShoeSystem.values()).sorted(Comparator.comparingInt(system -> -system.title().length()))
                .filter(system -> plain.startsWith(system.title().toLowerCase(Locale.ROOT))).findFirst()
                .flatMap(system -> number(plain.substring(system.title().length())).filter(system::has)
                        .map(number -> new ShoeSize(system, number)));
    }

    /** Shoe sizes have halves, written as inches are. */
    private static Optional<Double> number(String text) {
        return quantity(text.strip() + " in").map(Length::amount);
    }

    private static Optional<Double> measured(String text) {
        return quantity(text).map(Length::mm);
    }

    private static Optional<Length> quantity(String text) {
        try {
            return Quantity.parse(text) instanceof Length length ? Optional.of(length) : Optional.empty();
        } catch (IllegalArgumentException notAQuantity) {
            return Optional.empty();
        }
    }

    /** The sizes of a foot in every system that has one for it, to the half. */
    public static List<ShoeSize> of(double footLengthMm) {
        List<ShoeSize> sizes = new ArrayList<>();
        for (ShoeSystem system : ShoeSystem.values()) {
            double number = system.rounded(system.size(footLengthMm));
            if (system.has(number)) {
                sizes.add(new ShoeSize(system, number));
            }
        }
        return sizes;
    }

    /** {@code EU 38.5}. */
    @Override
    public String toString() {
        return system.title() + " " + Notation.number(number);
    }
}
