package turnheel.workbench.document;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

    /** {0} the sentence of the query. */
    public static String CellReason_error_0;
    public static String CellReason_noValue;
    /** {0} the sentence of the query. */
    public static String CellReason_warning_0;

    public static String GradedDocument_failed;
    /** {0} the exception. */
    public static String GradedDocument_failed_0;

    static {
        NLS.initializeMessages("turnheel.workbench.document.messages", Messages.class); //$NON-NLS-1$
    }

    private Messages() {
    }
}
