package turnheel.exchange.document;

import java.util.List;

/**
 * What a page tells, in order. Every format renders all of it.
 *
 * @param title what it is, in a line; it heads the document and names it in a list of files
 * @param subject what it is about, in a sentence
 * @param imprint who made it from which state of the design, in lines; stands at its end
 * @param blocks everything between the two
 */
public record Document(String title, String subject, List<String> imprint, List<Block> blocks) {

    /** The language of every word of ours, as in BCP 47. */
    public static final String LANGUAGE = "en";

    public Document {
        imprint = List.copyOf(imprint);
        blocks = List.copyOf(blocks);
    }
}
