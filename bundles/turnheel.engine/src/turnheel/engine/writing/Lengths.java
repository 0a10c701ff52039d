package turnheel.engine.writing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.DoubleFunction;

import turnheel.engine.design.LengthUnit;
import turnheel.engine.instruction.Sized;
import turnheel.engine.wording.HouseStyle;

/** Lengths in the units, decimals and fractions of a house style. */
final class Lengths {

    private static final String BETWEEN_UNITS = " / ";

    private final HouseStyle style;

    private final int centimetreParts;
    private final int inchParts;

    Lengths(HouseStyle style) {
        this(style, 10, style.inchDenominator());
    }

    private Lengths(HouseStyle style, int centimetreParts, int inchParts) {
        this.style = style;
        this.centimetreParts = centimetreParts;
        this.inchParts = inchParts;
    }

    /** A length for each size with its unit, or with both, as in {@code 18 (19, 20.5) cm / 7 (7 1/2, 8) in}. */
    List<Piece> of(Sized<Double> millimetres) {
        return switch (style.lengths()) {
            case CENTIMETRES -> in(LengthUnit.CENTIMETRE, millimetres, this::centimetres);
            case INCHES -> in(LengthUnit.INCH, millimetres, this::inches);
            case BOTH -> new Phrase().add(in(LengthUnit.CENTIMETRE, millimetres, this::centimetres)).add(BETWEEN_UNITS)
                    .add(in(LengthUnit.INCH, millimetres, this::inches)).pieces();
        };
    }

    /** The same as precise as a knitter's own foot is measured: to half a centimetre and a quarter of an inch. */
    List<Piece> ofAdvice(Sized<Double> millimetres) {
        Lengths coarse = new Lengths(style, 2, Math.min(4, style.inchDenominator()));
        return coarse.of(millimetres);
    }

    private static List<Piece> in(LengthUnit unit, Sized<Double> millimetres, DoubleFunction<String> text) {
        Sized<String> each = millimetres.map(mm -> text.apply(mm / unit.millimetres()));
        return new Phrase().add(List.of(Piece.Values.of(each))).add(" " + unit.symbol()).pieces();
    }

    private String centimetres(double centimetres) {
        return decimals(Math.rint(centimetres * centimetreParts) / centimetreParts, 1);
    }

    /** A number with at most so many decimals, halves away from zero. */
    String decimals(double number, int most) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(most, RoundingMode.HALF_UP).stripTrailingZeros();
        String plain = (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
        return plain.replace(".", style.decimal());
    }

    /** Whole inches and the nearest fraction that the style prints, as in {@code 7 1/2}. */
    private String inches(double inches) {
        long parts = Math.round(Math.abs(inches) * inchParts);
        long whole = parts / inchParts;
        int numerator = (int) (parts % inchParts);
        int denominator = inchParts;
        while (numerator > 0 && numerator % 2 == 0) {
            numerator /= 2;
            denominator /= 2;
        }
        String sign = inches < 0 && parts > 0 ? "-" : "";
        if (numerator == 0) {
            return sign + whole;
        }
        return sign + (whole == 0 ? "" : whole + " ") + numerator + "/" + denominator;
    }
}
