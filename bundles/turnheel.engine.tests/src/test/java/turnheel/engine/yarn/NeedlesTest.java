package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.Length;
import turnheel.engine.design.Quantity;

class NeedlesTest {

    @ParameterizedTest(name = "{0} is US {1}")
    @CsvSource(textBlock = """
            # ends of the bands of the standard yarn weights, reference table
            1.5 mm,   000
            2.25 mm,  1
            3.25 mm,  3
            5.5 mm,   9
            0.8 cm,   11
            12.75 mm, 17
            """)
    void areNumberedAsInTheStandardTable(String diameter, String number) {
        assertEquals(Optional.of(number), Needles.usNumber((Length) Quantity.parse(diameter)));
    }

    /** Makers print 1, 1 1/2 and 2 on needles of 2.5 mm. */
    @ParameterizedTest
    @CsvSource({"2.5 mm", "3 mm", "2.26 mm", "30 mm"})
    void haveNoNumberWhereMakersDiffer(String diameter) {
        assertEquals(Optional.empty(), Needles.usNumber((Length) Quantity.parse(diameter)));
    }
}
