package turnheel.engine.design;

/**
 * How far the stretches without shaping are worked, as the pattern says it. No count of stitches depends on it: what a
 * knitter measures may be longer or shorter in rounds.
 *
 * @param leg not to fit
 * @param cuff not to fit
 * @param snap where a stitch pattern is worked in whole repeats of its rows only
 * @throws IllegalArgumentException when leg or cuff is to fit: the foot alone has the wearer's own length to be
 *     measured against
 */
public record Lengths(LengthMode foot, LengthMode leg, LengthMode cuff, Snap snap) {

    /**
     * Foot and leg by rounds with what they measure, since knitters try on; the cuff, which is short, by rounds.
     * <em>Common practice.</em>
     */
    public static final Lengths USUAL = new Lengths(LengthMode.BOTH, LengthMode.BOTH, LengthMode.ROUNDS, Snap.NONE);

    public Lengths {
        refuseToFit("leg", leg);
        refuseToFit("cuff", cuff);
    }

    private static void refuseToFit(String part, LengthMode mode) {
        if (mode == LengthMode.TO_FIT) {
            throw new IllegalArgumentException(
                    "only the foot is worked to fit; write rounds or measure or both for the %s".formatted(part));
        }
    }
}
