package jackwork.motion.kind;

import jackwork.design.RackEntry;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.motion.model.Rack;
import jackwork.parts.Description;
import jackwork.parts.RackMesh;

/** A gear on a bar: {@link Rack}. */
public final class RackKind extends MechanismKind<RackEntry, RackMesh> {

    public RackKind() {
        super("racks", "rack", RackEntry.class, RackMesh.class, RackMesh::of);
    }

    @Override
    public void compile(RackMesh link, MechanismBuilder builder, int[] number) {
        builder.rack(
                link.name(),
                number[link.a()],
                link.centre(),
                link.gear().teeth(),
                number[link.b()],
                link.pitchPoint(),
                link.gear().pressureAngle(),
                link.friction().coefficient().value());
    }

    @Override
    public void describe(RackMesh link, Description out) {
        out.put("centre", link.centre());
        out.put("pitchPoint", link.pitchPoint());
        out.put("teeth", link.gear().teeth());
        out.put("module", link.gear().module(), 9);
        out.put("pressureAngleDeg", Math.toDegrees(link.gear().pressureAngle()), 6);
    }
}
