package jackwork.drawing;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A page to be cut or printed, in true size.
 *
 * @param width mm
 * @param height mm
 * @param paths mm, y up from the sheet's lower left corner
 */
public record CutSheet(String title, double width, double height, List<CutPath> paths, List<Label> labels) {

    public CutSheet {
        if (!(width > 0 && height > 0 && width <= Trace.FARTHEST && height <= Trace.FARTHEST)) {
            throw new IllegalArgumentException("sheet \"" + title + "\" is " + width + " x " + height
                    + " mm; more than 0 and at most " + (int) Trace.FARTHEST + " mm was expected");
        }
        paths = List.copyOf(paths);
        labels = List.copyOf(labels);
        Set<String> ids = new HashSet<>();
        Arrays.stream(CutKind.values()).map(CutKind::group).forEach(ids::add);
        for (CutPath path : paths) {
            if (!path.id().isEmpty() && !ids.add(path.id())) {
                throw new IllegalArgumentException("sheet \"" + title + "\" has two paths called \"" + path.id()
                        + "\", or it is the name of a group; give each path a name of its own");
            }
        }
    }

    /** This sheet's paths of one kind, in the order given. */
    Stream<CutPath> paths(CutKind kind) {
        return paths.stream().filter(path -> path.kind() == kind);
    }

    Stream<Label> labels(CutKind kind) {
        return labels.stream().filter(label -> label.kind() == kind);
    }
}
