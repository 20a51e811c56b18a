package jackwork.drawing;

import jackwork.geometry.Outline;
import java.io.IOException;
import java.util.List;

/** Something printed in true size, over several pages where one is too small. */
interface TiledFigure {

    /** For the pages' titles. */
    String name();

    /** All that is to be seen, mm. */
    Outline shown();

    /** What is to be said of this figure alone, at the foot of its pages. */
    List<String> notes();

    /** In the frame of {@link #shown}; what lies beyond the page is cut off. */
    void draw(PdfFile file, PdfCanvas canvas) throws IOException;

    /** Returns where the next entry begins. */
    double legend(PdfFile file, PdfCanvas canvas, double y) throws IOException;
}
