package turnheel.engine.yarn;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.Heel;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Leg;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Toe;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.design.Yarn;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/** Socks whose yarn is asked for. */
final class Socks {

    /** 210 m in 50 g, as the trade's table of quantities has it. */
    static final Yarn SOCK_YARN = Yarn.of("Harbour Mist", 210, 50);

    static final List<Toe> TOES = List.of(new RoundToe(4, Increase.YARN_OVER), new WedgeToe(Increase.MAKE_ONE),
            new StarToe(Increase.LIFTED), new ShortRowToe(TurnMethod.TWIN), new AsymmetricToe(Increase.FRONT_AND_BACK));
    static final List<Heel> HEELS = List.of(new ShortRowHeel(TurnMethod.GERMAN),
            new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody()),
            new FlapHeel(HeelTurn.SQUARE, new FlapLength.FromBody()),
            new AfterthoughtHeel(AfterthoughtHeel.Cap.WEDGE), new AfterthoughtHeel(AfterthoughtHeel.Cap.ROUND));
    static final List<Leg> LEGS = List.of(new StraightLeg(SockLength.CREW, LegCount.AS_FOOT),
            new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT));
    static final List<Cuff> CUFFS = List.of(new RibCuff(2, 2, false), new HemCuff(), new RolledCuff());

    private Socks() {
    }

    static Graded graded(Draft draft, Materials materials) {
        return Patterns.grade(draft.design().withMaterials(materials));
    }

    static GradedSize m(Draft draft, Materials materials) {
        return graded(draft, materials).size(Designs.M);
    }

    static double number(Draft draft, Materials materials, Parameter parameter) {
        return m(draft, materials).value(parameter);
    }

    /** Every kind of toe, heel, leg and cuff in both directions, beside usual other parts. */
    static Stream<Design> oneOfEach() {
        List<Design> all = new ArrayList<>();
        for (Direction direction : Direction.values()) {
            Design base = Designs.toeUp64().with(direction)
                    .with("body.heelCircumference = 310 mm; body.ankleCircumference = 210 mm")
                    .with("body.calfCircumference = 330 mm")
                    .design().withMaterials(Materials.of(SOCK_YARN));
            TOES.forEach(toe -> all.add(of(base, toe, base.heel(), base.leg(), base.cuff())));
            HEELS.forEach(heel -> all.add(of(base, base.toe(), heel, base.leg(), base.cuff())));
            LEGS.forEach(leg -> all.add(of(base, base.toe(), base.heel(), leg, base.cuff())));
            CUFFS.forEach(cuff -> all.add(of(base, base.toe(), base.heel(), base.leg(), cuff)));
        }
        return all.stream();
    }

    private static Design of(Design base, Toe toe, Heel heel, Leg leg, Cuff cuff) {
        String kinds = base.direction() + " " + toe + " " + heel + " " + leg + " " + cuff;
        return new Design(kinds, base.direction(), base.stitchGauge(), base.roundGauge(), toe, heel, leg, cuff,
                base.stitchPatterns(), base.materials(), base.sizes());
    }
}
