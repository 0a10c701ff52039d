package turnheel.engine.grading;

/**
 * What a count means on the foot.
 *
 * @param size label of the size
 * @param circumferenceMm finished circumference
 * @param easePercent finished circumference against the foot's; negative is smaller than the foot
 */
public record SizeFit(String size, int count, double circumferenceMm, double easePercent) {
}
