package turnheel.engine.yarn;

import java.util.ResourceBundle;

/** The standard yarn weights, 0 to 7; the table with its source is {@code categories.properties}. */
public final class Categories {

    private static final ResourceBundle TABLE = ResourceBundle.getBundle("turnheel.engine.yarn.categories");
    /** The table counts over 4 in. */
    private static final double PER_100_MM = 100 / 101.6;

    private Categories() {
    }

    /**
     * Stitches of plain knitting over 100 mm that a category is usually worked at.
     *
     * @param fewest lower end of the band
     * @param most upper end of the band
     */
    public record Band(double fewest, double most) {
    }

    /**
     * The band of a category.
     *
     * @throws java.util.MissingResourceException when there is no such category
     */
    public static Band band(int category) {
        String[] ends = TABLE.getString(category + ".stitches").split("-", -1);
        return new Band(Integer.parseInt(ends[0]) * PER_100_MM, Integer.parseInt(ends[1]) * PER_100_MM);
    }

    /** The trade's name of a category, as in {@code Super fine}. */
    public static String name(int category) {
        return TABLE.getString(category + ".name");
    }
}
