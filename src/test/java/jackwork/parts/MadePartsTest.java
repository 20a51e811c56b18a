package jackwork.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Teeth and cams of the bare designs as they will be cut: they fit each other as drawn and when turned. */
@Tag("quick")
class MadePartsTest {

    private static Assembly assembly(String design) {
        return Assembler.assemble(DesignReader.read(Path.of("demo", design)));
    }

    private static Part part(Assembly assembly, String name) {
        return assembly.parts().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Outline turned(Outline outline, Point about, double angle) {
        Point shift = about.minus(about.turned(angle));
        return outline.moved(new Pose(shift.x(), shift.y(), angle));
    }

    private static List<String> holes(Part part) {
        return part.holes().stream().map(Hole::joint).toList();
    }

    @Test
    void gearsStandInEachOthersGaps() {
        Assembly windmill = assembly("windmill");
        GearMesh mesh = (GearMesh) windmill.links().stream()
                .filter(GearMesh.class::isInstance)
                .findFirst()
                .orElseThrow();
        Outline wheel = part(windmill, "wheel").drawn();
        Outline pinion = part(windmill, "pinion").drawn();
        for (int i = 0; i < 24; i++) {
            double angle = Math.toRadians(i * 2.5);
            Outline a = turned(wheel, mesh.centreA(), angle);
            Outline b = turned(pinion, mesh.centreB(), -2 * angle);
            assertThat(a.sharedArea(b)).isLessThan(1e-6);
            // The play is a tenth of a millimetre on each: turned by half a tooth more they cannot pass.
            assertThat(a.sharedArea(turned(b, mesh.centreB(), Math.toRadians(12))))
                    .isGreaterThan(1);
        }
    }

    @Test
    void theRackStandsInItsPinionsGaps() {
        Assembly cobbler = assembly("cobbler");
        RackMesh mesh = (RackMesh) cobbler.links().stream()
                .filter(RackMesh.class::isInstance)
                .findFirst()
                .orElseThrow();
        Outline rack = part(cobbler, "rack").drawn();
        Outline pinion = part(cobbler, "pinion").drawn();
        for (int i = 0; i < 12; i++) {
            double up = i * 0.6;
            Outline moved = rack.moved(new Point(0, up));
            // The rack stands left of the pinion: its way up turns it clockwise.
            Outline turned = turned(pinion, mesh.centre(), -up / mesh.gear().pitchRadius());
            assertThat(moved.sharedArea(turned)).as("%s mm up", up).isLessThan(0.02);
        }
        assertThat(rack.moved(new Point(0, 2)).sharedArea(pinion)).isGreaterThan(1);
    }

    @Test
    void theCamLiesUnderItsPegAndThePegHasItsHole() {
        Assembly cobbler = assembly("cobbler");
        CamPair cam = (CamPair) cobbler.links().stream()
                .filter(CamPair.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertThat(part(cobbler, "cam").drawn().distanceToEdge(cam.peg())).isCloseTo(cam.radius(), within(0.005));
        Hole peg = part(cobbler, "hammer").holes().stream()
                .filter(hole -> hole.joint().equals("cam"))
                .findFirst()
                .orElseThrow();
        assertThat(peg.circle().centre().distance(cam.peg())).isLessThan(1e-9);
        assertThat(peg.grips()).isTrue();
    }

    @Test
    void postsAndEyesOfStringsAreBored() {
        Assembly lamplighter = assembly("lamplighter");
        assertThat(holes(part(lamplighter, "stand"))).contains("open", "open-2");
        assertThat(holes(part(lamplighter, "lever"))).contains("lift", "open");
        assertThat(holes(part(lamplighter, "door"))).contains("open");
        assertThat(holes(part(lamplighter, "pole"))).contains("lift");
    }
}
