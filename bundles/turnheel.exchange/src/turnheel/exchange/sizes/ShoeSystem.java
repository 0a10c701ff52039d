package turnheel.exchange.sizes;

/**
 * How shoes are numbered, and the length of the foot that a number is made for. All are straight lines: a step per size
 * and a place where it starts. Sources: "Shoe Sizes" (2012) for the steps on the last; for feet the second-hand rules
 * of two public collections, which give the last 2 sizes (EU 13.3 mm, UK and US 16.9 mm) more than the foot. They
 * disagree by half a size in the UK, and makers do among themselves; nothing here is finer than half a size.
 */
public enum ShoeSystem {
    /** The foot's length in mm: ISO 9407. */
    MONDOPOINT("Mondopoint", 1, 0, 5, 80, 360),
    /** Paris points of 20/3 mm: 0.15 × mm + 2. Tables of children's sizes lie up to 5 mm beside it. */
    EU("EU", 20 / 3.0, -2, 0.5, 14, 56),
    /** Thirds of an inch, adults': 3 × inches − 23. */
    UK("UK", ShoeSystem.THIRD_OF_INCH, 23, 0.5, 0, 19.5),
    /** As {@link #UK} and 1. */
    US_MEN("US men", ShoeSystem.THIRD_OF_INCH, 22, 0.5, 1, 20.5),
    /** As {@link #US_MEN} and 1, on the scale of foot-measuring devices; many shops count half a size more. */
    US_WOMEN("US women", ShoeSystem.THIRD_OF_INCH, 21, 0.5, 2, 21.5),
    /** Up to 13 1/2, where the adults' begin with 1: 3 × inches − 10. */
    UK_CHILD("UK child", ShoeSystem.THIRD_OF_INCH, 10, 0.5, 0, 13.5),
    /** As {@link #UK_CHILD} and 1/3. */
    US_CHILD("US child", ShoeSystem.THIRD_OF_INCH, 10 - 1 / 3.0, 0.5, 0, 13.5);

    private static final double THIRD_OF_INCH = 25.4 / 3;

    private final String title;
    private final double millimetresPerSize;
    private final double sizesBelowZero;
    private final double step;
    private final double least;
    private final double most;

    ShoeSystem(String title, double millimetresPerSize, double sizesBelowZero, double step, double least, double most) {
        this.title = title;
        this.millimetresPerSize = millimetresPerSize;
        this.sizesBelowZero = sizesBelowZero;
        this.step = step;
        this.least = least;
        this.most = most;
    }

    /** What stands before the number. */
    public String title() {
        return title;
    }

    /** The size of a foot, unrounded. */
    public double size(double footLengthMm) {
        return footLengthMm / millimetresPerSize - sizesBelowZero;
    }

    /** The length of the foot, in mm, that a size is made for. */
    public double footLengthMm(double size) {
        return (size + sizesBelowZero) * millimetresPerSize;
    }

    /** A size to the step in which shoes are made: half sizes, 5 mm. */
    public double rounded(double size) {
        return Math.rint(size / step) * step;
    }

    /** Whether shoes have such a size. */
    public boolean has(double size) {
        return size >= least && size <= most;
    }
}
