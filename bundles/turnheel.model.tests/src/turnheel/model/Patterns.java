package turnheel.model;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.Size;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.term.Key;
import turnheel.model.pattern.Pattern;

/** Documents that several tests start from. */
final class Patterns {

    /** A small pattern, byte for byte as it is saved. */
    static final String HARBOUR_TEXT = """
            <?xml version="1.0" encoding="UTF-8"?>
            <turnheel:Pattern xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" \
            xmlns:turnheel="urn:turnheel:pattern"
                format="1"
                title="Harbour"
                direction="toe-up"
                stitchGauge="32/10 cm"
                roundGauge="44/10 cm">
              <toe xsi:type="turnheel:RoundToe" lines="4" increase="make-one" castOn="unworked" lean="right"/>
              <heel xsi:type="turnheel:ShortRowHeel" turn="wrapped"/>
              <leg xsi:type="turnheel:StraightLeg" length="crew" count="as-foot"/>
              <cuff xsi:type="turnheel:RibCuff" knit="2" purl="2" mayAdjust="false"/>
              <size id="m" label="M">
                <input key="body.footLength" value="240 mm"/>
                <input key="body.footCircumference" value="22.5 cm"/>
                <override key="foot.stitches" value="64"/>
              </size>
              <size id="l" label="L">
                <input key="body.footLength" value="255 mm"/>
              </size>
            </turnheel:Pattern>
            """;

    private Patterns() {
    }

    /** The design that {@link #HARBOUR_TEXT} describes. */
    static Design harbour() {
        Size medium = new Size("m", "M",
                Map.of(key("body.footLength"), Quantity.parse("240 mm"),
                        key("body.footCircumference"), Quantity.parse("22.5 cm")),
                Map.of(key("foot.stitches"), Quantity.parse("64")));
        Size large = new Size("l", "L", Map.of(key("body.footLength"), Quantity.parse("255 mm")), Map.of());
        return new Design("Harbour", Direction.TOE_UP, Literals.gauge("32/10 cm"), Literals.gauge("44/10 cm"),
                new RoundToe(4, Increase.MAKE_ONE), new ShortRowHeel(TurnMethod.WRAPPED),
                new StraightLeg(SockLength.CREW),
                new RibCuff(2, 2), List.of(medium, large));
    }

    static Pattern read(String text) throws DocumentException {
        return PatternFiles.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "harbour.turnheel");
    }

    static String written(Pattern pattern) throws DocumentException {
        return new String(PatternFiles.bytes(pattern, "harbour.turnheel"), StandardCharsets.UTF_8);
    }

    static Key key(String name) {
        return new Key(name);
    }
}
