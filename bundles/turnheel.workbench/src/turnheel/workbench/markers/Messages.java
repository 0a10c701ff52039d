package turnheel.workbench.markers;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

    /** {0} name of the file. */
    public static String QueryMarkers_job_0;
    /** {0} line, {1} column. */
    public static String QueryMarkers_line_0_1;
    /** {0} label, {1} sizes. */
    public static String QueryMarkers_location_0_1;
    /** {0} sizes, {1} sentence. */
    public static String QueryMarkers_message_0_1;

    static {
        NLS.initializeMessages("turnheel.workbench.markers.messages", Messages.class); //$NON-NLS-1$
    }

    private Messages() {
    }
}
