package turnheel.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Increase;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.Size;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.term.Key;

/** A pattern in as many sizes as asked for, from a small child's foot to a large adult's. */
public final class ManySizes {

    private static final double SMALLEST_FOOT_MM = 120;
    private static final double LARGEST_FOOT_MM = 300;
    private static final Length TEN_CENTIMETRES = new Length(10, LengthUnit.CENTIMETRE);

    private ManySizes() {
    }

    /** Cuff-down, a panel on the instep, whole repeats on the leg, ribs of four: three patterns that the counts must keep. */
    public static Design threeStitchPatterns(int sizes, double stitchesPerTenCentimetres) {
        List<StitchPattern> patterns = List.of(new StitchPattern(Zone.INSTEP, 6, 1, 8, Fit.WHOLE_REPEATS, 1),
                new StitchPattern(Zone.LEG, 4, 0, 4, Fit.WHOLE_REPEATS, 1));
        return new Design("Many Sizes", Direction.CUFF_DOWN, new Gauge(stitchesPerTenCentimetres, TEN_CENTIMETRES),
                new Gauge(stitchesPerTenCentimetres * 1.4, TEN_CENTIMETRES), new StarToe(Increase.MAKE_ONE),
                new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody()), new StraightLeg(SockLength.CREW, LegCount.AS_FOOT),
                new RibCuff(2, 2, true), patterns, sizes(sizes));
    }

    private static List<Size> sizes(int count) {
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double foot = SMALLEST_FOOT_MM + (LARGEST_FOOT_MM - SMALLEST_FOOT_MM) * i / Math.max(1, count - 1);
            Map<Key, Quantity> inputs = new LinkedHashMap<>();
            put(inputs, Catalogue.FOOT_LENGTH.key(), foot);
            put(inputs, Catalogue.FOOT_CIRCUMFERENCE.key(), 0.94 * foot);
            put(inputs, Catalogue.ANKLE_CIRCUMFERENCE.key(), 0.9 * foot);
            put(inputs, Catalogue.HEEL_CIRCUMFERENCE.key(), 1.27 * foot);
            sizes.add(new Size("size" + i, "S" + (i + 1), inputs, Map.of()));
        }
        return sizes;
    }

    private static void put(Map<Key, Quantity> inputs, Key key, double mm) {
        inputs.put(key, new Length(Math.rint(mm), LengthUnit.MILLIMETRE));
    }
}
