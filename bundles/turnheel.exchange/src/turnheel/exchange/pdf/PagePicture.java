package turnheel.exchange.pdf;

import java.util.List;
import java.util.stream.Stream;

import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.Shape;

/**
 * A picture, or a piece of one, as it stands on a page.
 *
 * @param scale of the picture on paper, at most 1
 * @param onItsSide whether the page is wider than high
 */
record PagePicture(Picture picture, double scale, boolean onItsSide) {

    /** The least height of letters on paper, in mm: between five and six points, the size of the notes below a text. */
    private static final double LEAST_LETTERS = 1.9;
    private static final double USUAL_LETTERS = 3.2;
    /** From which share of its largest size on a picture shares its page with another. */
    private static final double NEARLY = 0.85;
    private static final int MOST_ACROSS = 4;
    private static final int MOST_PIECES = 12;

    /**
     * The pages that a picture needs to be read: an upright one, one on its side, or else as few pieces as will do. The
     * pieces stand in reading order.
     *
     * @param taken height that something else needs on each page, in mm
     */
    static List<PagePicture> pages(Picture picture, double taken) {
        PagePicture whole = best(picture, letters(picture), taken);
        if (whole.isLegible(letters(picture))) {
            return List.of(whole);
        }
        for (int pieces = 2; pieces <= MOST_PIECES; pieces++) {
            for (int across = 1; across <= Math.min(pieces, MOST_ACROSS); across++) {
                List<PagePicture> pages = pieces % across == 0 ? cut(picture, across, pieces / across, taken)
                        : List.of();
                if (!pages.isEmpty() && pages.stream().allMatch(page -> page.isLegible(letters(picture)))) {
                    return pages;
                }
            }
        }
        return List.of(whole);
    }

    private static List<PagePicture> cut(Picture picture, int across, int down, double taken) {
        return PicturePieces.of(picture, across, down).stream()
                .map(piece -> best(piece, letters(picture), taken)).toList();
    }

    /** Upright where that can be read: a reader who turns no page is happier. */
    private static PagePicture best(Picture picture, double letters, double taken) {
        double largest = scale(picture, PrintStyle.WIDTH, PrintStyle.HEIGHT - taken);
        double half = scale(picture, PrintStyle.WIDTH, PrintStyle.HALF_HEIGHT);
        PagePicture upright = new PagePicture(picture, half >= NEARLY * largest ? half : largest, false);
        PagePicture side = new PagePicture(picture,
                scale(picture, PrintStyle.WIDE_WIDTH, PrintStyle.WIDE_HEIGHT - taken), true);
        return upright.isLegible(letters) || upright.scale >= side.scale ? upright : side;
    }

    private static double scale(Picture picture, double width, double height) {
        return Math.min(1, Math.min(width / picture.width(), height / picture.height()));
    }

    private boolean isLegible(double letters) {
        return scale * letters >= LEAST_LETTERS;
    }

    /** Height of the smallest letters, in mm of the picture. */
    private static double letters(Picture picture) {
        return flat(picture.shapes()).filter(Shape.Text.class::isInstance).map(Shape.Text.class::cast)
                .mapToDouble(Shape.Text::size).min().orElse(USUAL_LETTERS);
    }

    /** All shapes, also those in groups, in their order. */
    static Stream<Shape> flat(List<Shape> shapes) {
        return shapes.stream().flatMap(shape -> switch (shape) {
            case Shape.Group(var name, var members) -> flat(members);
            case Shape.Line line -> Stream.of(line);
            case Shape.Path path -> Stream.of(path);
            case Shape.Rectangle rectangle -> Stream.of(rectangle);
            case Shape.Circle circle -> Stream.of(circle);
            case Shape.Text text -> Stream.of(text);
        });
    }

    /** Millimetres on paper. */
    double width() {
        return scale * picture.width();
    }

    /** Millimetres on paper. */
    double height() {
        return scale * picture.height();
    }
}
