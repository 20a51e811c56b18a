package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Assembly;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each demo box put together on paper from its own parts: every tab meets its slot, and nothing overlaps. */
class CaseTest {

    /** Slices through parts with slanting and curved edges, mm. */
    private static final double SLICE = 0.25;

    private record Together(Design design, Subject subject, Case housing, double fit) {
        static Together of(String name, Map<String, Double> measured) {
            Design design = DesignReader.read(Path.of("demo", name)).withMeasured(measured);
            Subject subject = Subject.of(design);
            Case housing = Case.of(design, subject);
            assertThat(housing).isNotNull();
            return new Together(
                    design,
                    subject,
                    housing,
                    design.workshop().fits().pushOrGuess().value());
        }

        List<Prism> panels() {
            return housing.panels().stream().map(Prism::of).toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void noPanelIsWhereAnotherIs(String name) {
        List<Prism> panels = Together.of(name, Map.of()).panels();
        for (int i = 0; i < panels.size(); i++) {
            for (int j = 0; j < i; j++) {
                double shared = panels.get(i).shared(panels.get(j), 10);
                assertThat(shared)
                        .as(panels.get(i).name() + " and " + panels.get(j).name())
                        .isCloseTo(0, within(1e-6));
            }
        }
    }

    /** At the middle of the wall it goes through, every tab ends half a fit from the wood around its slot. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "cobbler"})
    void everyTabMeetsItsSlot(String name) {
        for (double sheet : new double[] {2, 2.95, 3.175}) {
            Together together = Together.of(name, Map.of("birch-3", sheet));
            List<Prism> panels = together.panels();
            int tabs = 0;
            for (Prism tabbed : panels) {
                for (Prism slotted : panels) {
                    if (tabbed.axis() != slotted.axis()) {
                        tabs += meet(tabbed, slotted, together.fit());
                    }
                }
            }
            // Four corners, four edges of the floor, two of the lid.
            assertThat(tabs).isGreaterThan(2 * 4 + 4 * 2 + 2 * 4);
        }
    }

    private static int meet(Prism tabbed, Prism slotted, double fit) {
        Panel.Axis along = tabbed.sharedAxis(slotted);
        List<double[]> tabs = tabbed.unbored().wood(along, slotted.middle());
        List<double[]> wood = slotted.unbored().wood(along, tabbed.middle());
        int met = 0;
        for (double[] tab : tabs) {
            for (double[] w : wood) {
                assertThat(Math.min(tab[1], w[1]) - Math.max(tab[0], w[0]))
                        .as(tabbed.name() + " in " + slotted.name())
                        .isLessThan(1e-9);
            }
            boolean below = wood.stream().anyMatch(w -> Math.abs(tab[0] - fit / 2 - w[1]) < 1e-9);
            boolean above = wood.stream().anyMatch(w -> Math.abs(tab[1] + fit / 2 - w[0]) < 1e-9);
            if (below && above) {
                met++;
            } else if (tab[1] - tab[0] < 25 && !wood.isEmpty()) {
                boolean inside = tab[0] > wood.get(0)[0] && tab[1] < wood.get(wood.size() - 1)[1];
                assertThat(inside)
                        .as("a tab of " + tabbed.name() + " at " + tab[0] + " to " + tab[1] + " mm has no slot in "
                                + slotted.name())
                        .isFalse();
            }
        }
        return met;
    }

    /** A panel measured thicker has wider slots, by as much. */
    @ParameterizedTest
    @ValueSource(strings = {"heron"})
    void slotsFollowTheSheetInHand(String name) {
        Together thin = Together.of(name, Map.of("birch-3", 2.85));
        Together thick = Together.of(name, Map.of("birch-3", 3.1));
        double a = thin.housing().panels().get(0).outline().area();
        assertThat(thick.housing().panels().get(0).to()
                        - thick.housing().panels().get(0).from())
                .isCloseTo(3.1, within(1e-12));
        assertThat(thick.housing().panels().get(0).outline().area()).isNotCloseTo(a, within(1.0));
    }

    /** Parts at rest and pressed, the bucket at rest and tipped, each where its layer is. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void theWorksStandFreeInTheirCase(String name) {
        Together together = Together.of(name, Map.of());
        Assembly assembly = together.subject().assembly();
        Layers layers = Layers.of(assembly.parts());
        List<Prism> panels = together.panels();
        for (int body = 0; body < assembly.bodies().size(); body++) {
            List<Pose> all = Sweep.poses(together.subject(), body);
            List<Pose> poses = new ArrayList<>(List.of(all.get(0)));
            poses.add(all.get(all.size() / 2));
            poses.add(all.get(all.size() - 1));
            for (Part part : assembly.body(body).parts()) {
                for (Pose pose : poses) {
                    Prism moved = new Prism(
                            part.name(),
                            Panel.Axis.Z,
                            layers.back(part.layer()),
                            layers.front(part.layer()),
                            part.drawn().moved(pose),
                            List.of());
                    // What moves keeps a millimetre of air where it goes through a wall; the plates stand where they
                    // stand.
                    double air = body == 0 ? 0 : 1;
                    Prism wide = new Prism(
                            part.name(),
                            Panel.Axis.Z,
                            moved.from(),
                            moved.to(),
                            air == 0
                                    ? moved.outline()
                                    : Outline.of(moved.outline().outer()).offset(air),
                            List.of());
                    for (Prism panel : panels) {
                        assertThat(wide.shared(panel, SLICE))
                                .as(part.name() + " and " + panel.name())
                                .isCloseTo(0, within(1e-6));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void partsOfOneLayerDoNotOverlap(String name) {
        List<Part> parts = Together.of(name, Map.of()).subject().assembly().parts();
        for (Part a : parts) {
            for (Part b : parts) {
                boolean meshed = (a.name() + b.name()).matches(".*(wheel|pinion|rack|rod|ratchet).*");
                if (a.layer() == b.layer() && a.name().compareTo(b.name()) < 0 && !meshed) {
                    assertThat(a.drawn().sharedArea(b.drawn()))
                            .as(a.name() + " and " + b.name())
                            .isLessThan(0.01);
                }
            }
        }
    }

    /** The columns that hold the plates apart, wherever the works are screwed: nothing ever comes there. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void nothingSweepsThroughTheSpacers(String name) {
        Together together = Together.of(name, Map.of());
        Assembly assembly = together.subject().assembly();
        assertThat(together.housing().spacers()).hasSize(4);
        for (Point at : together.housing().spacers()) {
            Outline column = Outline.disc(new Circle(at, Case.SPACER / 2), 0.01);
            int plates = 0;
            for (int body = 0; body < assembly.bodies().size(); body++) {
                for (Part part : assembly.body(body).parts()) {
                    if (body == 0
                            && part.ofBox()
                            && Outline.of(part.drawn().outer()).contains(at)) {
                        plates++;
                        assertThat(part.drawn().contains(at))
                                .as("a hole for the screw")
                                .isFalse();
                        continue;
                    }
                    for (Pose pose : Sweep.poses(together.subject(), body)) {
                        assertThat(column.overlaps(part.drawn().moved(pose)))
                                .as(part.name() + " at " + at)
                                .isFalse();
                    }
                }
            }
            assertThat(plates).isEqualTo(2);
        }
    }
}
