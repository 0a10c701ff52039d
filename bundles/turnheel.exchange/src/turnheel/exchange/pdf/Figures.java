package turnheel.exchange.pdf;

import java.awt.Rectangle;
import java.awt.Shape;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Element;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.RenderingContext;

import turnheel.engine.drawing.Picture;

/** Paints the pictures of a tree where the renderer has made room for them. */
final class Figures implements FSObjectDrawerFactory, FSObjectDrawer {

    private final List<Picture> pictures;
    private final PDDocument file;
    private final Faces faces;

    Figures(List<Picture> pictures, PDDocument file, Faces faces) {
        this.pictures = List.copyOf(pictures);
        this.file = file;
        this.faces = faces;
    }

    @Override
    public FSObjectDrawer createDrawer(Element element) {
        return this;
    }

    @Override
    public boolean isReplacedObject(Element element) {
        return true;
    }

    @Override
    public Map<Shape, String> drawObject(Element element, double x, double y, double width, double height,
            OutputDevice device, RenderingContext context, int dotsPerPixel) {
        Picture picture = pictures.get(Integer.parseInt(element.getAttribute("data")));
        PdfBoxOutputDevice page = (PdfBoxOutputDevice) device;
        double dotsPerPoint = page.getDotsPerPoint();
        try {
            page.drawPdfAsImage(PictureForm.of(picture, file, faces),
                    new Rectangle((int) x, (int) y, (int) width, (int) height),
                    (float) (dotsPerPoint * PictureForm.points(picture.width())),
                    (float) (dotsPerPoint * PictureForm.points(picture.height())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.of();
    }
}
