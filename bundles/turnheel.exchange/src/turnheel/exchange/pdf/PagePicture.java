package turnheel.exchange.pdf;

import java.util.List;

import turnheel.engine.drawing.Picture;

/**
 * How a picture stands on paper: shrunk as little as needed.
 *
 * @param width millimetres on paper
 * @param height millimetres on paper
 * @param onItsSide whether its page is wider than high
 */
record PagePicture(double width, double height, boolean onItsSide) {

    static List<Picture> pieces(Picture picture) {
        return List.of(picture);
    }

    static PagePicture of(Picture picture) {
        double scale = Math.min(1, Math.min(PrintStyle.WIDTH / picture.width(), 215 / picture.height()));
        return new PagePicture(scale * picture.width(), scale * picture.height(), false);
    }
}
