package turnheel.engine.drawing;

/** What is measured on a finished sock; the order is that of the table under a drawing. */
enum Measure {
    FOOT_LENGTH, FOOT_WIDTH, HEEL_HEIGHT, LEG_WIDTH, CALF_WIDTH, LEG_TOP_WIDTH, LEG_HEIGHT, CUFF_HEIGHT;

    String label() {
        return Words.text("measure." + name());
    }
}
