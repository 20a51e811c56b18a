package jackwork.app;

import jackwork.design.Adjustable;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignFiles;
import jackwork.design.EntryEdit;
import jackwork.geometry.Point;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An edit's steps as new texts of a design's files. */
final class Splices {

    /** A place of the page, mm in the common frame. */
    private static final Pattern PLACE = Pattern.compile("\\[\\s*(-?[0-9.]{1,12})\\s*,\\s*(-?[0-9.]{1,12})\\s*]");

    private Splices() {}

    static Map<Path, String> apply(Design design, DesignFiles files, Map<Path, String> texts, List<Edit.Step> steps) {
        Map<Path, String> now = new LinkedHashMap<>(texts);
        for (Edit.Step step : steps) {
            String value = inOwnFrame(design, step);
            switch (step.kind()) {
                case SET ->
                    now.computeIfPresent(files.design(), (path, text) -> DesignEdit.with(text, step.path(), value));
                case ADD -> EntryEdit.add(files, now, step.path(), value);
                case REMOVE -> EntryEdit.remove(design, files, now, step.path());
                case RENAME -> EntryEdit.rename(design, files, now, step.path(), value);
            }
        }
        return now;
    }

    /** Places come in the common frame; the files count from their own drawing's origin. */
    private static String inOwnFrame(Design design, Edit.Step step) {
        Matcher matcher = PLACE.matcher(step.value());
        StringBuilder out = new StringBuilder();
        while (matcher.find()) {
            try {
                Point at = new Point(Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2)));
                matcher.appendReplacement(out, Adjustable.words(design, step.path(), at));
            } catch (NumberFormatException e) {
                throw new BadRequestException("read \"" + matcher.group() + "\", expected a place: [12.5, 80]");
            }
        }
        return matcher.appendTail(out).toString();
    }
}
