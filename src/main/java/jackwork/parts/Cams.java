package jackwork.parts;

import jackwork.design.CamEntry;
import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.Works;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Cams of a design as profiles. */
final class Cams {

    private Cams() {}

    static Point centre(Design design, Works works, String name, CamEntry cam) {
        return Places.at(design, works, cam.at(), name);
    }

    static CamProfile profile(Design design, Works works, String name, CamEntry cam) {
        Point centre = centre(design, works, name, cam);
        Point peg = Places.at(design, works, cam.follower().at(), "").minus(centre);
        double radius = Named.in(design.workshop().rods(), cam.rod()).diameter().value() / 2;
        boolean swings = cam.swings() != null;
        List<CamMotion.Piece> pieces = new ArrayList<>();
        for (CamEntry.PieceEntry piece : cam.motion()) {
            String written = piece.law();
            pieces.add(new CamMotion.Piece(
                    law(written == null ? CamLaw.HARMONIC.key() : written),
                    Math.toRadians(piece.turn()),
                    swings ? Math.toRadians(piece.moved()) : piece.moved()));
        }
        CamMotion motion = new CamMotion(pieces);
        Double along = cam.along();
        if (along != null) {
            return CamProfile.straight(motion, peg, new Point(1, 0).turned(Math.toRadians(along)), radius);
        }
        return CamProfile.swinging(
                motion, peg, pin(design, String.valueOf(cam.swings())).minus(centre), radius);
    }

    private static CamLaw law(String key) {
        for (CamLaw law : CamLaw.values()) {
            if (law.key().equals(key)) {
                return law;
            }
        }
        throw new IllegalStateException("law " + key + " was not checked on reading");
    }

    private static Point pin(Design design, String name) {
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            if (works.pins().containsKey(name)) {
                return Places.at(design, works, Named.in(works.pins(), name).at(), name);
            }
        }
        throw new IllegalStateException("pin " + name + " was not checked on reading");
    }
}
