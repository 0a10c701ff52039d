package turnheel.exchange.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import turnheel.engine.drawing.Bounds;
import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.Shape;

/** Cuts a picture that is too large for a page, between its symbols and lines of text. */
final class PicturePieces {

    /** What is longer may be cut: it is a frame or a line that goes on. */
    private static final double LONGEST_WHOLE = 12;
    /** What of a symbol's edge may be cut: a line is cut lengthwise where two squares meet. */
    private static final double EDGE = 0.6;

    private final Picture picture;
    private final List<Shape> shapes;

    private PicturePieces(Picture picture) {
        this.picture = picture;
        this.shapes = PagePicture.flat(picture.shapes()).toList();
    }

    /** The pieces, row by row; each title and description says which it is. */
    static List<Picture> of(Picture picture, int across, int down) {
        return new PicturePieces(picture).cut(across, down);
    }

    /** From where to where something reaches along one side of the picture, in mm. */
    private record Reach(double from, double to) {
        boolean holds(double place) {
            return from + EDGE < place && place < to - EDGE;
        }
    }

    private List<Picture> cut(int across, int down) {
        List<Reach> columns = parts(picture.width(), across,
                shape -> new Reach(shape.bounds().left(), shape.bounds().right()));
        List<Reach> rows = parts(picture.height(), down,
                shape -> new Reach(shape.bounds().top(), shape.bounds().bottom()));
        List<Picture> pieces = new ArrayList<>();
        for (Reach row : rows) {
            for (Reach column : columns) {
                String which = Words.text("piece", String.valueOf(pieces.size() + 1), String.valueOf(across * down));
                pieces.add(new Picture(column.to - column.from, row.to - row.from, picture.title() + " " + which,
                        picture.description(), shapes.stream().filter(shape -> lies(shape, column, row))
                                .map(shape -> shape.placed(1, -column.from, -row.from)).toList()));
            }
        }
        return pieces;
    }

    private List<Reach> parts(double length, int count, Function<Shape, Reach> along) {
        List<Reach> whole = shapes.stream().map(along).filter(reach -> reach.to - reach.from <= LONGEST_WHOLE).toList();
        List<Reach> parts = new ArrayList<>();
        double from = 0;
        for (int part = 1; part <= count; part++) {
            double to = part == count ? length : nearestGap(part * length / count, whole, from, length);
            parts.add(new Reach(from, to));
            from = to;
        }
        return parts;
    }

    /** The place nearest to the one wished for at which nothing is cut that should stay whole. */
    private static double nearestGap(double wished, List<Reach> whole, double from, double length) {
        return Stream.concat(Stream.of(wished), whole.stream().flatMap(reach -> Stream.of(reach.from, reach.to)))
                .filter(place -> from < place && place < length)
                .filter(place -> whole.stream().noneMatch(reach -> reach.holds(place)))
                .reduce((one, other) -> Math.abs(one - wished) <= Math.abs(other - wished) ? one : other)
                .orElse(wished);
    }

    /** A line of text lies where it begins; anything else wherever a part of it is. */
    private static boolean lies(Shape shape, Reach column, Reach row) {
        Bounds bounds = shape.bounds();
        if (shape instanceof Shape.Text) {
            return column.from <= bounds.left() && bounds.left() < column.to
                    && row.from <= bounds.top() && bounds.top() < row.to;
        }
        return bounds.left() < column.to && bounds.right() > column.from
                && bounds.top() < row.to && bounds.bottom() > row.from;
    }
}
