package turnheel.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintedLengthTest {

    @ParameterizedTest(name = "{0} mm")
    @CsvSource(textBlock = """
            # by hand; ties go up: half an eighth of an inch is 1.5875 mm
            0,       0 cm,    0 in
            1.58,    0.2 cm,  0 in
            1.5875,  0.2 cm,  1/8 in
            12.7,    1.3 cm,  1/2 in
            25.4,    2.5 cm,  1 in
            100,     10 cm,   3 7/8 in
            228.6,   22.9 cm, 9 in
            228.44,  22.8 cm, 9 in
            228.5,   22.9 cm, 9 in
            244.475, 24.4 cm, 9 5/8 in
            """)
    void roundsToATenthAndToAnEighth(double mm, String centimetres, String inches) {
        assertEquals(centimetres, PrintedLength.centimetres(mm));
        assertEquals(inches, PrintedLength.inches(mm));
    }
}
