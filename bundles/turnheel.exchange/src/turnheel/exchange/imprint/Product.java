package turnheel.exchange.imprint;

/** Who made the file. */
public final class Product {

    /** The product's name, which is not translated. */
    public static final String NAME = "Turnheel";

    private Product() {
    }
}
