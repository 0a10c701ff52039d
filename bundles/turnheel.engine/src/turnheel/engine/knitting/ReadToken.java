package turnheel.engine.knitting;

import org.antlr.v4.runtime.CommonToken;
import org.eclipse.jdt.annotation.NonNullByDefault;
import turnheel.engine.stitch.Stitch;

/** A token of the grammar that knows the words it came from. */
@NonNullByDefault({}) // the parser's runtime does not say what it hands over
final class ReadToken extends CommonToken {

    private static final long serialVersionUID = 1;

    private final transient Word first;
    private final transient Word last;
    private final transient Stitch stitch;
    private final String name;

    ReadToken(int type, Word first, Word last, Stitch stitch, String name) {
        super(type, first.raw());
        this.first = first;
        this.last = last;
        this.stitch = stitch;
        this.name = name;
    }

    Word first() {
        return first;
    }

    Word last() {
        return last;
    }

    /** Which stitch a {@code STITCH} is. */
    Stitch stitch() {
        return stitch;
    }

    /** What a {@code NAME} refers to; else its words. */
    String name() {
        return name;
    }

    /** The number of a {@code NUMBER}. */
    double number() {
        return first.number();
    }
}
