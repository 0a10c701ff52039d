package turnheel.product;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

    /** {0} name of the file. */
    public static String ExampleProject_unreadable_0;
    public static String FirstStart_job;
    public static String FirstStart_notRemembered;

    static {
        NLS.initializeMessages("turnheel.product.messages", Messages.class); //$NON-NLS-1$
    }

    private Messages() {
    }
}
