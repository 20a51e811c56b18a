package jackwork.motion.kind;

import jackwork.design.MeshEntry;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.motion.model.Mesh;
import jackwork.parts.Description;
import jackwork.parts.GearMesh;

/** Two gears: {@link Mesh}. */
public final class MeshKind extends MechanismKind<MeshEntry, GearMesh> {

    public MeshKind() {
        super("meshes", "mesh", MeshEntry.class, GearMesh.class, GearMesh::of);
    }

    @Override
    public void compile(GearMesh link, MechanismBuilder builder, int[] number) {
        builder.mesh(
                link.name(),
                number[link.a()],
                link.centreA(),
                link.gearA().teeth(),
                number[link.b()],
                link.centreB(),
                link.inside() ? -link.gearB().teeth() : link.gearB().teeth(),
                link.gearA().pressureAngle(),
                link.friction().coefficient().value());
    }

    @Override
    public void describe(GearMesh link, Description out) {
        out.put("inside", link.inside());
        out.put("centreA", link.centreA());
        out.put("centreB", link.centreB());
        out.put("teethA", link.gearA().teeth());
        out.put("teethB", link.gearB().teeth());
        out.put("module", link.gearA().module(), 9);
        out.put("pressureAngleDeg", Math.toDegrees(link.gearA().pressureAngle()), 6);
    }
}
