package turnheel.workbench.grid;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

    public static String GridData_parameter;
    public static String GridData_unit;

    /** {0} label, {1} size. */
    public static String GridEdits_drop_0_1;
    /** {0} how many. */
    public static String GridEdits_dropMany_0;
    /** {0} label. */
    public static String GridEdits_own_0;
    /** {0} label, {1} size, {2} the reason as a sentence. */
    public static String GridEdits_refused_0_1_2;
    /** {0} label. */
    public static String GridEdits_result_0;
    /** {0} label, {1} labels of what it follows from. */
    public static String GridEdits_result_0_1;
    /** {0} label, {1} size. */
    public static String GridEdits_set_0_1;

    public static String GradingGrid_nothingToDrop;

    public static String PartWords_body;
    public static String PartWords_cuff;
    public static String PartWords_fit;
    public static String PartWords_foot;
    public static String PartWords_gauge;
    public static String PartWords_heel;
    public static String PartWords_leg;
    public static String PartWords_own;
    public static String PartWords_toe;
    public static String PartWords_yarn;

    static {
        NLS.initializeMessages("turnheel.workbench.grid.messages", Messages.class); //$NON-NLS-1$
    }

    private Messages() {
    }
}
