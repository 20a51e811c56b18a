package jackwork.parts;

import jackwork.design.CamEntry;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import java.util.List;

/**
 * A cam and its round follower.
 *
 * @param follower body that carries the peg
 * @param peg its centre as drawn
 * @param radius of the peg, mm
 * @param cam body of the cam
 * @param centre of the cam
 */
public record CamPair(
        String name,
        int follower,
        Point peg,
        double radius,
        int cam,
        String camPart,
        Point centre,
        CamProfile profile,
        FrictionPair friction)
        implements Rubbing {

    @Override
    public List<Integer> bodies() {
        return List.of(follower, cam);
    }

    @Override
    public Link with(FrictionPair other) {
        return new CamPair(name, follower, peg, radius, cam, camPart, centre, profile, other);
    }

    /** As it is written. */
    public static CamPair of(String name, CamEntry cam, Joining around) {
        return new CamPair(
                name,
                around.body(cam.follower().part()),
                around.at(cam.follower()),
                around.rodRadius(cam.rod()),
                around.body(cam.part()),
                cam.part(),
                Cams.centre(around.design(), around.works(), name, cam),
                Cams.profile(around.design(), around.works(), name, cam),
                around.onRod(cam.rod(), cam.part()));
    }
}
