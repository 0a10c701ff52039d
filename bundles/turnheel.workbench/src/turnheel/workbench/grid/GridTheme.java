package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.painter.cell.BackgroundPainter;
import org.eclipse.nebula.widgets.nattable.painter.cell.ICellPainter;
import org.eclipse.nebula.widgets.nattable.painter.cell.TextPainter;
import org.eclipse.nebula.widgets.nattable.painter.cell.decorator.CellPainterDecorator;
import org.eclipse.nebula.widgets.nattable.painter.cell.decorator.PaddingDecorator;
import org.eclipse.nebula.widgets.nattable.style.BorderStyle;
import org.eclipse.nebula.widgets.nattable.style.BorderStyle.LineStyleEnum;
import org.eclipse.nebula.widgets.nattable.style.HorizontalAlignmentEnum;
import org.eclipse.nebula.widgets.nattable.style.theme.ModernNatTableThemeConfiguration;
import org.eclipse.nebula.widgets.nattable.ui.util.CellEdgeEnum;
import org.eclipse.nebula.widgets.nattable.util.GUIHelper;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.RGB;

/**
 * How the grid looks on one background: the table itself here, the kinds of cell in {@link KindStyles}. Made anew and
 * set again when the theme of the workbench changes.
 */
final class GridTheme extends ModernNatTableThemeConfiguration {

    private static final int SIDE = 6;

    private final MarkPainter.Marks markOf;

    /**
     * @param palette mixed from the colours around the grid
     * @param font of the text around the grid
     * @param markOf the mark in front of the value in a cell of the body
     */
    GridTheme(Palette palette, Font font, MarkPainter.Marks markOf) {
        Color background = color(palette.background());
        Color foreground = color(palette.foreground());
        Color shaded = color(palette.shaded());
        Color selected = color(palette.selected());

        defaultBgColor = background;
        defaultFgColor = foreground;
        defaultFont = font;
        defaultHAlign = HorizontalAlignmentEnum.RIGHT;
        evenRowBgColor = background;
        oddRowBgColor = background;

        cHeaderBgColor = shaded;
        cHeaderFgColor = foreground;
        cHeaderFont = styled(font, SWT.BOLD);
        cHeaderHAlign = HorizontalAlignmentEnum.RIGHT;
        cHeaderSelectionBgColor = selected;
        cHeaderSelectionFgColor = foreground;
        cHeaderSelectionFont = cHeaderFont;
        cHeaderFullSelectionBgColor = selected;
        cHeaderFullSelectionFgColor = foreground;

        rHeaderBgColor = shaded;
        rHeaderFgColor = foreground;
        rHeaderFont = font;
        rHeaderHAlign = HorizontalAlignmentEnum.LEFT;
        rHeaderSelectionBgColor = selected;
        rHeaderSelectionFgColor = foreground;
        rHeaderSelectionFont = null;
        rHeaderFullSelectionBgColor = selected;
        rHeaderFullSelectionFgColor = foreground;

        styleCornerLikeColumnHeader = false;
        cornerBgColor = shaded;
        cornerFgColor = foreground;
        cornerFont = cHeaderFont;
        cornerHAlign = HorizontalAlignmentEnum.LEFT;
        cornerSelectionBgColor = shaded;
        cornerSelectionFgColor = foreground;

        // The selection tints; text keeps the colour and typography of its kind.
        defaultSelectionBgColor = selected;
        defaultSelectionFgColor = null;
        defaultSelectionFont = null;
        selectionAnchorSelectionBgColor = selected;
        selectionAnchorSelectionFgColor = null;
        selectionAnchorSelectionFont = null;
        selectionAnchorBorderStyle = null;
        selectionAnchorGridBorderStyle = new BorderStyle(2, color(palette.accent()), LineStyleEnum.SOLID);

        gridLineColor = color(palette.line());
        conversionErrorBgColor = color(palette.errorGround());
        conversionErrorFgColor = color(palette.error());

        this.markOf = markOf;
        addThemeExtension(new KindStyles(palette, font));
    }

    @Override
    public void createPainterInstances() {
        super.createPainterInstances();
        defaultCellPainter = padded(new CellPainterDecorator(new TextPainter(false, false), CellEdgeEnum.LEFT, 0,
                new MarkPainter(markOf), true, false));
        cHeaderCellPainter = padded(new TextPainter(false, false));
        cHeaderSelectionCellPainter = cHeaderCellPainter;
        rHeaderCellPainter = padded(new TextPainter(false, false));
        rHeaderSelectionCellPainter = rHeaderCellPainter;
        cornerCellPainter = padded(new TextPainter(false, false));
    }

    private static ICellPainter padded(ICellPainter painter) {
        return new BackgroundPainter(new PaddingDecorator(painter, 0, SIDE, 0, SIDE, false));
    }

    static Color color(RGB rgb) {
        return GUIHelper.getColor(rgb);
    }

    /** The same font in another style; kept and disposed of by the library's registry. */
    static Font styled(Font font, int style) {
        FontData[] data = font.getFontData();
        for (FontData each : data) {
            each.setStyle(style);
        }
        return GUIHelper.getFont(data);
    }
}
