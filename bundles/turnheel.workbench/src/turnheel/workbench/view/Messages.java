package turnheel.workbench.view;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

    public static String PatternView_nothing;

    public static String WhyView_basis;
    public static String WhyView_dependents;
    public static String WhyView_hint;

    static {
        NLS.initializeMessages("turnheel.workbench.view.messages", Messages.class); //$NON-NLS-1$
    }

    private Messages() {
    }
}
