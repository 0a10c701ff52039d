package turnheel.engine.design;

/** Which way the lines of a spiral lean; the one is the mirror image of the other. */
public enum Lean {
    /** Narrowing, every section ends with a k2tog; widening, it begins with its new stitch. */
    RIGHT,
    /** Narrowing, every section begins with an ssk; widening, it ends with its new stitch. */
    LEFT
}
