package turnheel.engine.design;

/** Which end of the sock is knitted first. */
public enum Direction {
    TOE_UP, CUFF_DOWN
}
