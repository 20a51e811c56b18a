package jackwork.app.core;

import jackwork.app.wire.Json;
import jackwork.design.Design;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One state of a design with all that the page shows of it, worked out and written down: a state that cannot be shown is
 * never saved, since its {@code Shown} cannot be made.
 */
public final class Shown {

    /** How the answer ends where nothing can be taken back or made again. */
    private static final String NOTHING = ",\"undo\":null,\"redo\":null,\"putAside\":null}";

    private final DesignCheck check;
    private final DesignView view;
    private final String json;

    private Shown(DesignCheck check, DesignView view) {
        this.check = check;
        this.view = view;
        this.json = Json.compact(view);
        if (!json.endsWith(NOTHING)) {
            throw new IllegalStateException("a design's view ends otherwise than with what can be taken back");
        }
    }

    /**
     * Works all of it out.
     *
     * @param sharing names of the other designs on the same figure file
     * @throws jackwork.motion.model.MechanismException when the lever does not decide where every part is
     * @throws jackwork.parts.PartException when a part cannot be made
     * @throws jackwork.make.MakeException when it cannot be asked whether it can be made
     */
    public static Shown of(String id, String version, Design design, List<String> sharing) {
        DesignCheck check = DesignCheck.of(design);
        DesignView view = new DesignView(
                id,
                version,
                SceneMaker.of(check.subject().assembly()),
                ReportMaker.of(check),
                ChangeableMaker.of(design, sharing),
                Remedies.mendable(design, check.findings()),
                null,
                null,
                null);
        return new Shown(check, view);
    }

    /** The same; other designs may have come to share its figure since, or left it. */
    Shown sharedWith(List<String> sharing) {
        return sharing.equals(view.changeable().sharedWith())
                ? this
                : new Shown(
                        check,
                        new DesignView(
                                view.id(),
                                view.version(),
                                view.scene(),
                                view.report(),
                                view.changeable().sharedWith(sharing),
                                view.mendable(),
                                null,
                                null,
                                null));
    }

    public DesignCheck check() {
        return check;
    }

    public DesignView view() {
        return view;
    }

    /** A {@link DesignView}. */
    String json(@Nullable String undo, @Nullable String redo, @Nullable String putAside) {
        String labels = Json.compact(new Labels(undo, redo, putAside));
        return json.substring(0, json.length() - NOTHING.length()) + "," + labels.substring(1);
    }

    private record Labels(
            @Nullable String undo,
            @Nullable String redo,
            @Nullable String putAside) {}
}
