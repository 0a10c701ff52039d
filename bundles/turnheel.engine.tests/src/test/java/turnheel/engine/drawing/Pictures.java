package turnheel.engine.drawing;

import java.util.List;
import java.util.stream.Stream;

import turnheel.engine.design.Cuff;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Toe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;

/** Ways into pictures, and socks to draw. */
final class Pictures {

    private Pictures() {
    }

    /** All shapes, those of groups too. */
    static Stream<Shape> shapes(Picture picture) {
        return picture.shapes().stream().flatMap(Pictures::flat);
    }

    private static Stream<Shape> flat(Shape shape) {
        return shape instanceof Shape.Group(var name, var shapes) ? shapes.stream().flatMap(Pictures::flat)
                : Stream.of(shape);
    }

    static List<String> texts(Picture picture) {
        return shapes(picture).flatMap(shape -> shape instanceof Shape.Text text ? Stream.of(text.text()) : Stream.of())
                .toList();
    }

    /** The areas of fabric: the largest sock. */
    static List<Shape.Path> fabric(Picture picture) {
        return shapes(picture).flatMap(shape -> shape instanceof Shape.Path path
                && path.paint().equals(Paint.filled(Ink.FABRIC)) ? Stream.of(path) : Stream.of()).toList();
    }

    /** One sock of every kind of part in both directions. */
    static List<Draft> oneOfEach() {
        return Stream.of(Direction.values()).flatMap(direction -> {
            Draft draft = Designs.toeUp64().with(direction);
            return Stream.of(Designs.ONE_TOE_OF_EACH.stream().map((Toe toe) -> draft.with(toe)),
                    Designs.ONE_HEEL_OF_EACH.stream().map((Heel heel) -> draft.with(heel)),
                    Designs.ONE_LEG_OF_EACH.stream().map((Leg leg) -> draft.with(leg)),
                    Designs.ONE_CUFF_OF_EACH.stream().map((Cuff cuff) -> draft.with(cuff)))
                    .flatMap(drafts -> drafts);
        }).toList();
    }
}
