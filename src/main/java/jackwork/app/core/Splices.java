package jackwork.app.core;

import jackwork.design.Adjustable;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignFiles;
import jackwork.design.EntryEdit;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An edit's steps as new texts of a design's files. */
final class Splices {

    private Splices() {}

    static Map<Path, String> apply(Design design, DesignFiles files, Map<Path, String> texts, List<Edit.Step> steps) {
        Map<Path, String> now = new LinkedHashMap<>(texts);
        for (Edit.Step step : steps) {
            switch (step.kind()) {
                case SET ->
                    now.computeIfPresent(
                            files.design(), (path, text) -> DesignEdit.with(text, step.path(), value(design, step)));
                case ADD -> EntryEdit.add(files, now, step.path(), value(design, step));
                case REMOVE -> EntryEdit.remove(design, files, now, step.path());
                case RENAME ->
                    EntryEdit.rename(
                            design, files, now, step.path(), step.value().asString(""));
            }
        }
        return now;
    }

    /** Places come in the common frame; the files count from their own drawing's origin. */
    private static String value(Design design, Edit.Step step) {
        return FlowText.of(step.value(), at -> Adjustable.words(design, step.path(), at));
    }
}
