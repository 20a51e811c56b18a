package jackwork.design;

import jackwork.drawing.Drawing;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Holds gears, cams, strings and the other joints of one file against what they name. */
final class JointReferences {

    private static final List<String> LAWS =
            List.of("harmonic", "cycloidal", "3-4-5", "4-5-6-7", "modified-sine", "modified-trapezoid");

    private final WorkshopFile workshop;
    private final Works works;
    private final YamlFile yaml;
    private final Drawing drawing;
    private final Set<String> nameable;
    private final Collection<String> gears;
    private final Collection<String> pins;

    JointReferences(
            WorkshopFile workshop,
            Works works,
            YamlFile yaml,
            Drawing drawing,
            Set<String> nameable,
            Collection<String> gears,
            Collection<String> pins) {
        this.workshop = workshop;
        this.works = works;
        this.yaml = yaml;
        this.drawing = drawing;
        this.nameable = nameable;
        this.gears = gears;
        this.pins = pins;
    }

    void check() {
        works.gears().forEach(this::checkGear);
        works.meshes().forEach(this::checkMesh);
        works.racks().forEach(this::checkRack);
        works.cams().forEach(this::checkCam);
        works.pawls().forEach(this::checkPawl);
        works.strings().forEach(this::checkString);
        works.limits().forEach(this::checkLimit);
        works.touches().forEach(this::checkTouch);
        works.springs().forEach((name, spring) -> {
            pointOf("springs." + name + ".from", spring.from());
            pointOf("springs." + name + ".to", spring.to());
            positive("springs." + name + ".stiffness", spring.stiffness());
        });
        works.torques().forEach((name, torque) -> part("torques." + name + ".on", torque.on()));
    }

    private void checkGear(String name, GearEntry gear) {
        String path = "gears." + name;
        ownPart(path + ".part", gear.part());
        place(path, gear.at(), name);
        if (gear.teeth() < 5 || gear.teeth() > 400) {
            yaml.problem(path + ".teeth", "read " + gear.teeth() + ", expected 5 to 400");
        }
        boolean meshed = works.meshes().values().stream()
                        .anyMatch(mesh -> mesh.between().contains(name))
                || works.racks().values().stream().anyMatch(rack -> rack.gear().equals(name));
        if (!meshed) {
            yaml.problem(path, "no mesh and no rack names this gear, so its teeth have no size; add it to `meshes`");
        }
    }

    private void checkMesh(String name, MeshEntry mesh) {
        String path = "meshes." + name;
        if (mesh.between().size() != 2) {
            yaml.problem(path + ".between", "expected two gears");
        }
        mesh.between().forEach(gear -> known(path + ".between", gear, gears, "a gear"));
        angle(path + ".pressure-angle", mesh.pressureAngle());
    }

    private void checkRack(String name, RackEntry rack) {
        String path = "racks." + name;
        known(path + ".gear", rack.gear(), gears, "a gear");
        ownPart(path + ".part", rack.part());
        positive(path + ".module", rack.module());
        if (rack.teeth() < 1 || rack.teeth() > 200) {
            yaml.problem(path + ".teeth", "read " + rack.teeth() + ", expected 1 to 200");
        }
        angle(path + ".pressure-angle", rack.pressureAngle());
    }

    private void angle(String path, @Nullable Double angle) {
        if (angle != null && !(angle >= 10 && angle <= 35)) {
            yaml.problem(path, "read " + angle + ", expected 10 to 35 degrees");
        }
    }

    private void checkCam(String name, CamEntry cam) {
        String path = "cams." + name;
        ownPart(path + ".part", cam.part());
        place(path, cam.at(), name);
        pointOf(path + ".follower", cam.follower());
        rod(path + ".rod", cam.rod());
        String swings = cam.swings();
        if ((swings == null) == (cam.along() == null)) {
            yaml.problem(path, "expected either swings (a pin) or along (a direction), to say how the follower goes");
        }
        if (swings != null) {
            known(path + ".swings", swings, pins, "a pin");
        }
        double turn = 0;
        double move = 0;
        for (int i = 0; i < cam.motion().size(); i++) {
            CamEntry.PieceEntry piece = cam.motion().get(i);
            String law = piece.law();
            if (law != null) {
                known(path + ".motion." + i + ".law", law, LAWS, "a law");
            } else if (piece.moved() != 0) {
                yaml.problem(path + ".motion." + i, "a piece that moves needs a law: " + String.join(", ", LAWS));
            }
            positive(path + ".motion." + i + ".turn", piece.turn());
            turn += piece.turn();
            move += piece.moved();
        }
        if (Math.abs(turn - 360) > 1e-6 || Math.abs(move) > 1e-6) {
            yaml.problem(
                    path + ".motion",
                    "the pieces turn by " + turn + " degrees and leave the follower " + move
                            + " away; expected 360 and 0: lengthen a dwell, and let every rise fall again");
        }
    }

    private void checkPawl(String name, PawlEntry pawl) {
        String path = "pawls." + name;
        pointOf(path + ".tip", pawl.tip());
        ownPart(path + ".wheel", pawl.wheel());
        place(path, pawl.at(), name);
        positive(path + ".tip-radius", pawl.tipRadius());
        positive(path + ".depth", pawl.depth());
        if (!(pawl.radius() > pawl.depth())) {
            yaml.problem(path + ".radius", "read " + pawl.radius() + ", expected more than the teeth's depth");
        }
        if (pawl.teeth() < 3 || pawl.teeth() > 200) {
            yaml.problem(path + ".teeth", "read " + pawl.teeth() + ", expected 3 to 200");
        }
    }

    private void checkString(String name, StringEntry string) {
        String path = "strings." + name;
        known(path + ".cord", string.cord(), workshop.cords().keySet(), "a cord of workshop.yaml");
        pointOf(path + ".from", string.from());
        pointOf(path + ".to", string.to());
        for (int i = 0; i < string.over().size(); i++) {
            StringEntry.GuideEntry guide = string.over().get(i);
            String at = path + ".over." + i;
            References.partOrGround(at + ".part", guide.part(), nameable, yaml);
            place(at, guide.at(), "");
            String rod = guide.rod();
            String turns = guide.turns();
            Double eyelet = guide.eyelet();
            if (eyelet != null && (rod != null || !(eyelet >= 2 && eyelet <= 30))) {
                yaml.problem(at + ".eyelet", "read " + eyelet + ", expected 2 to 30 mm, and no rod beside it");
            }
            if (rod != null) {
                rod(at + ".rod", rod);
                known(at + ".turns", turns == null ? "" : turns, List.of("left", "right"), "left or right");
            }
        }
        Double slack = string.slack();
        if (slack != null && slack < 0) {
            yaml.problem(
                    path + ".slack", "read " + slack + ", expected 0 or more: a string is not shorter than its path");
        }
    }

    private void checkLimit(String name, LimitEntry limit) {
        String path = "limits." + name;
        pointOf(path + ".from", limit.from());
        pointOf(path + ".to", limit.to());
        if (limit.least() == null && limit.most() == null) {
            yaml.problem(path, "expected least, most or both, mm");
        }
    }

    private void checkTouch(String name, TouchEntry touch) {
        String path = "touches." + name;
        part(path + ".part", touch.part());
        part(path + ".on", touch.on());
        String rod = touch.rod();
        if ((touch.peg() == null) != (rod == null)) {
            yaml.problem(path, "a peg that touches needs both peg (where) and rod (which)");
        }
        if (rod != null) {
            rod(path + ".rod", rod);
            place(path, touch.peg(), "");
        }
    }

    private void pointOf(String path, PointOf point) {
        References.partOrGround(path + ".part", point.part(), nameable, yaml);
        place(path + ".at", point.at(), "");
    }

    private void part(String path, String part) {
        known(path, part, nameable, "a part");
    }

    private void ownPart(String path, String part) {
        known(path, part, works.parts().keySet(), "a part of this file");
    }

    private void rod(String path, String rod) {
        known(path, rod, workshop.rods().keySet(), "a rod of workshop.yaml");
    }

    private void known(String path, String name, Collection<String> known, String what) {
        References.known(path, name, known, what, yaml);
    }

    private void place(String path, @Nullable Place place, String fallback) {
        References.place(path, place, fallback, drawing, yaml);
    }

    private void positive(String path, double value) {
        if (!(value > 0)) {
            yaml.problem(path, "read " + value + ", expected more than 0");
        }
    }
}
