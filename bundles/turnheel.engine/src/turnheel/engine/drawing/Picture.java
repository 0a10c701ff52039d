package turnheel.engine.drawing;

import java.util.List;

/**
 * A picture, ready to be painted on whatever surface. One millimetre is one millimetre of the thing drawn where that is
 * to scale; paper may shrink the whole.
 *
 * @param width millimetres; nothing lies left of 0 or right of it
 * @param height millimetres; nothing lies above 0 or below it
 * @param title what it is, in a line
 * @param description the same in sentences, for somebody who cannot see it
 * @param shapes later ones cover earlier ones
 */
public record Picture(double width, double height, String title, String description, List<Shape> shapes) {

    public Picture {
        shapes = List.copyOf(shapes);
    }

    /** The picture of shapes that lie anywhere, with a margin around them. */
    static Picture of(String title, String description, List<Shape> shapes, double margin) {
        Bounds bounds = shapes.stream().map(Shape::bounds).reduce(Bounds::and).orElseThrow();
        return new Picture(bounds.width() + 2 * margin, bounds.height() + 2 * margin, title, description,
                shapes.stream().map(shape -> shape.placed(1, margin - bounds.left(), margin - bounds.top())).toList());
    }
}
