package turnheel.engine.design;

/** On which parts a stitch pattern ends with its last row; the rounds left over are worked plain. */
public enum Snap {
    NONE, FOOT, LEG, FOOT_AND_LEG;

    public boolean foot() {
        return this == FOOT || this == FOOT_AND_LEG;
    }

    public boolean leg() {
        return this == LEG || this == FOOT_AND_LEG;
    }
}
