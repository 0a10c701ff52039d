package turnheel.exchange.sizes;

import java.util.List;

import turnheel.engine.design.Size;

/**
 * A table of sizes to start from.
 *
 * @param id what scripts call it, as in {@code women-by-foot-length}
 * @param name what people call it
 * @param measured what its figures are measures of
 * @param source where the figures come from
 * @param note what to know before using it
 * @param sizes smallest first, without overrides
 */
public record SizeTable(String id, String name, Measured measured, String source, String note, List<Size> sizes) {

    /** What was measured; ease must not be taken twice. */
    public enum Measured {
        /** Feet and legs. Ease comes off or on when a sock is made to fit them. */
        BODY,
        /** Finished socks, with their ease already taken. */
        SOCK
    }

    public SizeTable {
        sizes = List.copyOf(sizes);
    }
}
