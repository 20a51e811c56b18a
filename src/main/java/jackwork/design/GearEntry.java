package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("A gear. Its teeth are drawn from its mesh: the part needs no outline, a ring needs its outer one.")
public record GearEntry(
        @About("The part with the teeth.") @Names(value = NameKind.PART, whose = Names.Whose.OWN, shapes = true)
        String part,

        @About("Its centre; the circle with the gear's own name when left out.") @OwnCircle @Nullable
        Place at,

        @About("Number of teeth.")
        @Quantity(least = 5, most = 400, usualFrom = 8, usualTo = 120, why = "fewer jam, more are too fine to cut")
        int teeth,

        @About("true for teeth on the inside of a ring.") @Nullable
        Boolean inside)
        implements Entry {

    @Override
    public void check(String path, Around around) {
        String name = path.substring(path.indexOf('.') + 1);
        Works works = around.works();
        boolean meshed = works.joints(MeshEntry.class).values().stream()
                        .anyMatch(mesh -> mesh.between().contains(name))
                || works.joints(RackEntry.class).values().stream()
                        .anyMatch(rack -> rack.gear().equals(name));
        // A mesh that names no two gears is said where it stands; this gear may be the one that it should name.
        boolean meant = works.joints(MeshEntry.class).values().stream().anyMatch(mesh -> !mesh.isPair());
        if (!meshed && !meant) {
            around.problem(path, "no mesh and no rack names this gear, so its teeth have no size; add it to `meshes`");
        }
    }
}
