package turnheel.engine.drawing;

import java.util.Optional;

/** How a closed shape is drawn: filled, edged, or both. */
public record Paint(Optional<Ink> fill, Optional<Pen> edge) {

    static Paint filled(Ink ink) {
        return new Paint(Optional.of(ink), Optional.empty());
    }

    static Paint edged(Pen pen) {
        return new Paint(Optional.empty(), Optional.of(pen));
    }

    static Paint of(Ink fill, Pen edge) {
        return new Paint(Optional.of(fill), Optional.of(edge));
    }

    Paint scaled(double scale) {
        return new Paint(fill, edge.map(pen -> pen.scaled(scale)));
    }

    /** How far the edge reaches outside the shape. */
    double overhang() {
        return edge.map(pen -> pen.width() / 2).orElse(0.0);
    }
}
