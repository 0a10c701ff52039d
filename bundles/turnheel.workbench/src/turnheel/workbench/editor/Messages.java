package turnheel.workbench.editor;

import org.eclipse.osgi.util.NLS;

/**
 * Numbers at the end of a name are the placeholders of its sentence; what stands for them is said in the properties.
 */
final class Messages extends NLS {


    public static String DamagedPage_heading_0;
    public static String DamagedPage_openText;
    public static String DamagedPage_problem_0_1_2;
    public static String DamagedPage_readAgain;
    public static String DamagedPage_title;
    public static String DamagedPage_unchanged;

    public static String FileWatch_keep;
    public static String FileWatch_question_0;
    public static String FileWatch_readAgain;
    public static String FileWatch_refresh_0;
    public static String FileWatch_title;

    public static String GradingPage_givenUp_0_1;
    public static String GradingPage_hint;
    public static String GradingPage_legend;
    public static String GradingPage_stale_0;
    public static String GradingPage_title;

    public static String IdentitySection_designer;
    public static String IdentitySection_direction;
    public static String IdentitySection_gaugeHint;
    public static String IdentitySection_noGauge_0;
    public static String IdentitySection_patternTitle;
    public static String IdentitySection_roundGauge;
    public static String IdentitySection_stitchGauge;
    public static String IdentitySection_title;

    public static String OverviewPage_change_0;
    public static String OverviewPage_title;

    public static String OwnRowDialog_formula;
    public static String OwnRowDialog_formulaHint;
    public static String OwnRowDialog_label;
    public static String OwnRowDialog_name;
    public static String OwnRowDialog_nameHint;
    public static String OwnRowDialog_noName;
    public static String OwnRowDialog_taken_0;
    public static String OwnRowDialog_tooLong_0;

    public static String OwnRowsSection_add;
    public static String OwnRowsSection_addStep_0;
    public static String OwnRowsSection_addTitle;
    public static String OwnRowsSection_edit;
    public static String OwnRowsSection_editStep_0;
    public static String OwnRowsSection_editTitle;
    public static String OwnRowsSection_formula;
    public static String OwnRowsSection_remove;
    public static String OwnRowsSection_removeStep_0;
    public static String OwnRowsSection_row;
    public static String OwnRowsSection_title;

    public static String PartsSection_cuff;
    public static String PartsSection_heel;
    public static String PartsSection_leg;
    public static String PartsSection_stitchPatterns;
    public static String PartsSection_title;
    public static String PartsSection_toe;

    public static String PatternEditor_noFile_0;
    public static String PatternEditor_notSaved;
    public static String PatternEditor_notSaved_0;
    public static String PatternEditor_pending;

    public static String SizesSection_add;
    public static String SizesSection_addStep_0;
    public static String SizesSection_addTitle;
    public static String SizesSection_around;
    public static String SizesSection_down;
    public static String SizesSection_label;
    public static String SizesSection_length;
    public static String SizesSection_millimetres_0;
    public static String SizesSection_moveStep_0;
    public static String SizesSection_remove;
    public static String SizesSection_removeStep_0;
    public static String SizesSection_rename;
    public static String SizesSection_renameStep_0;
    public static String SizesSection_renameTitle;
    public static String SizesSection_size;
    public static String SizesSection_stitches;
    public static String SizesSection_taken_0;
    public static String SizesSection_title;
    public static String SizesSection_tooLong_0;
    public static String SizesSection_up;

    public static String SummarySection_error_0_1;
    public static String SummarySection_more_0;
    public static String SummarySection_noQueries;
    public static String SummarySection_nothing;
    public static String SummarySection_queries_0_1;
    public static String SummarySection_sizes_0_1_2;
    public static String SummarySection_sizes_0_1_2_3_4;
    public static String SummarySection_title;
    public static String SummarySection_warning_0_1;

    public static String TextField_refused_0_1;

    public static String UndoHandler_redo;
    public static String UndoHandler_redo_0;
    public static String UndoHandler_undo;
    public static String UndoHandler_undo_0;

    static {
        NLS.initializeMessages("turnheel.workbench.editor.messages", Messages.class); //$NON-NLS-1$
    }

    private Messages() {
    }
}
