package turnheel.exchange.document;

import java.util.List;

import turnheel.engine.design.Design;
import turnheel.exchange.imprint.ContentHash;
import turnheel.exchange.imprint.Product;

/** What stands at the end of every document that is made from a design. */
public final class Imprint {

    private Imprint() {
    }

    /** Who made it, and the content hash by which one finds the state of the design again. */
    public static List<String> of(Design design) {
        return List.of(Words.text("imprint", Product.NAME), Words.text("imprint.hash", ContentHash.of(design)));
    }
}
