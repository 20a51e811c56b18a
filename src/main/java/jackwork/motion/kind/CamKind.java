package jackwork.motion.kind;

import jackwork.design.CamEntry;
import jackwork.geometry.Point;
import jackwork.motion.model.CamTouch;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.CamPair;
import jackwork.parts.Description;
import java.util.List;
import java.util.stream.IntStream;

/** A cam and its follower: {@link CamTouch}. */
public final class CamKind extends MechanismKind<CamEntry, CamPair> {

    /** Corners that are told of its curve. */
    private static final int CAM_POINTS = 360;

    public CamKind() {
        super("cams", "cam", CamEntry.class, CamPair.class, CamPair::of);
    }

    @Override
    public void compile(CamPair link, MechanismBuilder builder, int[] number) {
        builder.cam(
                link.name(),
                number[link.follower()],
                link.peg(),
                link.radius(),
                number[link.cam()],
                link.centre(),
                link.profile(),
                link.friction().coefficient().value());
    }

    @Override
    public void describe(CamPair link, Description out) {
        out.put("peg", link.peg());
        out.put("radius", link.radius(), 6);
        out.put("centre", link.centre());
        Point pivot = link.profile().pivot();
        if (pivot == null) {
            out.put("along", link.profile().direction());
        } else {
            out.put("swingsAbout", link.centre().plus(pivot));
        }
        out.putList("motion", link.profile().motion().pieces(), (piece, node) -> {
            node.put("law", piece.law().key());
            node.put("turnDeg", Math.toDegrees(piece.turn()), 9);
            node.put("move", pivot == null ? piece.move() : Math.toDegrees(piece.move()), 9);
        });
        out.put("pitchCurve", pitchCurve(link));
    }

    private static List<Point> pitchCurve(CamPair cam) {
        double[] at = new double[6];
        return IntStream.range(0, CAM_POINTS)
                .mapToObj(i -> {
                    cam.profile().evaluate(2 * Math.PI * i / CAM_POINTS, at);
                    return cam.centre().plus(new Point(at[0], at[1]));
                })
                .toList();
    }
}
