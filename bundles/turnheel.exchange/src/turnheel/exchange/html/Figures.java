package turnheel.exchange.html;

import turnheel.engine.drawing.Picture;

/** How pictures stand in a page. */
@FunctionalInterface
public interface Figures {

    /**
     * The markup of a picture: one element, well-formed, with its description for those who cannot see it.
     *
     * @param id begins whatever ids it needs; no other element of the page has one that begins so
     */
    String element(Picture picture, String id);
}
