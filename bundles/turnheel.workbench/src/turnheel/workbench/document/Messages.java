package turnheel.workbench.document;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

    public static String GradedDocument_failed;
    /** {0} the exception. */
    public static String GradedDocument_failed_0;

    static {
        NLS.initializeMessages("turnheel.workbench.document.messages", Messages.class); //$NON-NLS-1$
    }

    private Messages() {
    }
}
