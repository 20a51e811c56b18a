package jackwork.app.core;

import jackwork.app.wire.Pair;
import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import java.util.List;

/** What a new design can stand on and be made of: the workshop's boxes and sheets. */
public record Grounds(List<BoxView> boxes, List<SheetView> sheets) implements Payload {

    /**
     * @param id its file, from the workshop's folder
     * @param lever name of its lever
     */
    public record BoxView(
            String id, String name, List<BoxPart> parts, List<BoxPoint> mounts, String lever, Pair pivot, Pair press) {}

    public record BoxPart(String name, int layer, List<List<Pair>> rings) {}

    public record BoxPoint(String name, Pair at) {}

    /** @param thickness mm */
    public record SheetView(String name, @Places(2) double thickness) {}
}
