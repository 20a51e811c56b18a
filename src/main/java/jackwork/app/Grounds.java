package jackwork.app;

import java.util.List;

/** What a new design can stand on and be made of: the workshop's boxes and sheets. */
record Grounds(List<BoxView> boxes, List<SheetView> sheets) implements Payload {

    /**
     * @param id its file, from the workshop's folder
     * @param lever name of its lever
     */
    record BoxView(
            String id, String name, List<BoxPart> parts, List<BoxPoint> mounts, String lever, Pair pivot, Pair press) {}

    record BoxPart(String name, int layer, List<List<Pair>> rings) {}

    record BoxPoint(String name, Pair at) {}

    /** @param thickness mm */
    record SheetView(String name, @Places(2) double thickness) {}
}
