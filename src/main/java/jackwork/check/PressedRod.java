package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Bore;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import jackwork.stock.Basis;
import jackwork.stock.RodKind;
import jackwork.stock.Rods;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A rod that a refused press bends, in the plates that grip it, and the edges of the holes about it.
 *
 * <p>A hole's edge in plywood bears {@code f = 0.11 (1 − 0.01 d) ρ} on {@code d t}, as EN 1995-1-1 has it for nails in
 * plywood (f in N/mm², d in mm, ρ in kg/m³), less what a laser has charred; and no more than the rod bears from its side. A sheet
 * that is no plywood bears what it does edgewise.
 *
 * @param name its joint
 * @param about layers of what turns on it or is stopped by it
 */
record PressedRod(Assembly assembly, String name, Point at, double diameter, List<Part> about) {

    /** What is left of a hole's edge where a laser cut it. */
    private static final Uncertain CHARRED =
            new Uncertain(0.6, 0.5, 0.7, "1", Basis.GUESS, "what char and play leave of it, from memory, no source");

    /** A rod that no drawn layer holds is gripped beside what it bears by the usual sheet, mm. */
    private static final double LAYER = 3;

    /** As in {@code Bearing}: for what arithmetic may leave, mm. */
    static final double SAME = 1e-9;

    /** The plates of the box that it goes through, the nearest behind and before what bears on it. */
    private List<Part> plates() {
        int first = about.stream().mapToInt(Part::layer).min().orElseThrow();
        int last = about.stream().mapToInt(Part::layer).max().orElseThrow();
        List<Part> bored = assembly.body(0).parts().stream()
                .filter(part -> bore(part).isPresent())
                .toList();
        List<Part> plates = new ArrayList<>();
        bored.stream()
                .filter(part -> part.layer() < first)
                .max(Comparator.comparingInt(Part::layer))
                .ifPresent(plates::add);
        bored.stream()
                .filter(part -> part.layer() > last)
                .min(Comparator.comparingInt(Part::layer))
                .ifPresent(plates::add);
        return plates;
    }

    private Optional<Bore> bore(Part part) {
        return part.holes().stream()
                .filter(hole -> hole.circle().centre().distance(at) < SAME)
                .flatMap(hole -> Optional.ofNullable(hole.bore()).stream())
                .findFirst();
    }

    /** Along the rod, for a force across it. */
    RodBeam beam(double force) {
        Layers layers = Layers.of(assembly.parts());
        double thick =
                about.stream().mapToDouble(part -> part.thickness().value()).sum();
        List<RodBeam.Load> loads = about.stream()
                .map(part -> {
                    double middle = layers.middle(part.layer());
                    double half = part.thickness().value() / 2;
                    return new RodBeam.Load(
                            middle - half,
                            middle + half,
                            force * part.thickness().value() / thick);
                })
                .toList();
        List<Double> supports =
                plates().stream().map(part -> layers.middle(part.layer())).toList();
        if (supports.isEmpty()) {
            double from = loads.stream().mapToDouble(RodBeam.Load::from).min().orElseThrow();
            double to = loads.stream().mapToDouble(RodBeam.Load::to).max().orElseThrow();
            supports = List.of(from - LAYER / 2, to + LAYER / 2);
        }
        return new RodBeam(supports, loads);
    }

    /** What any part is bored for there. */
    private Stream<Bore> bores() {
        return assembly.parts().stream().flatMap(part -> bore(part).stream());
    }

    /** Of the rod itself, where a printed shoulder is on it, mm. */
    private double rodDiameter() {
        return bores().filter(bore -> bore.rod() != null)
                .mapToDouble(Bore::through)
                .findFirst()
                .orElse(diameter);
    }

    /** What it is of. */
    private Optional<RodKind> kind() {
        return bores().flatMap(bore -> Optional.ofNullable(bore.rod()).stream())
                .flatMap(rod -> Optional.ofNullable(assembly.workshop().rods().get(rod)).stream())
                .flatMap(rod -> Rods.catalogue().find(rod.kind()).stream())
                .findFirst();
    }

    /** In which ways the rod and what holds it may give. */
    List<Gives> gives(double force) {
        return gives(force, kind(), rodDiameter());
    }

    /** The thinnest of the workshop's rods that would bear so many newtons for each of the finger, when pressed so hard. */
    Optional<String> wouldBear(double force, double finger) {
        return assembly.workshop().rods().entrySet().stream()
                .filter(entry -> entry.getValue().diameter().value() >= rodDiameter())
                .sorted(Comparator.comparingDouble(
                        entry -> entry.getValue().diameter().value()))
                .filter(entry -> Rods.catalogue()
                        .find(entry.getValue().kind())
                        .map(rod -> gives(
                                        force,
                                        Optional.of(rod),
                                        entry.getValue().diameter().value())
                                .stream()
                                .allMatch(gives -> gives.at() > finger))
                        .orElse(false))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private List<Gives> gives(double force, Optional<RodKind> kind, double thick) {
        List<Gives> all = new ArrayList<>();
        RodBeam beam = beam(force);
        kind.ifPresent(rod -> {
            String of = "strength of " + rod.label();
            all.add(new Gives(
                    say("the rod of {}", name),
                    "bends",
                    beam.bending() / RodBeam.modulus(thick),
                    rod.strength().bending(),
                    of + " in bending",
                    "M / (π d³ / 32) of " + Words.number(beam.bending()) + " N·mm and " + Words.number(thick)
                            + " mm, simply on the middles of its plates"));
            all.add(new Gives(
                    say("the rod of {}", name),
                    "shears",
                    4.0 / 3 * beam.shear() / RodBeam.area(thick),
                    rod.strength().shear(),
                    of + " in shear",
                    "4/3 V / (π d² / 4) of " + Words.number(beam.shear()) + " N"));
        });
        List<Part> plates = plates();
        for (int i = 0; i < plates.size(); i++) {
            all.add(edge(
                    "the hole of " + plates.get(i).name() + " for " + name,
                    List.of(plates.get(i)),
                    Math.abs(beam.reactions().get(i)),
                    kind,
                    thick));
        }
        return all;
    }

    /** The edge of the holes of what turns on it. */
    Gives runs(double force) {
        return edge("the hole of " + about.get(0).name() + " for " + name, about, force, kind(), diameter);
    }

    private Gives edge(String what, List<Part> parts, double force, Optional<RodKind> kind, double across) {
        double thick =
                parts.stream().mapToDouble(part -> part.thickness().value()).sum();
        Part weakest = parts.stream()
                .min(Comparator.comparingDouble(part -> embedment(part, across).value()))
                .orElseThrow();
        Uncertain strength = embedment(weakest, across);
        String of = "strength of a hole's edge in " + weakest.kind().label();
        Uncertain crushing = kind.map(rod -> rod.strength().crushing()).orElse(strength);
        if (crushing.value() < strength.value()) {
            strength = crushing;
            of = "strength of " + kind.map(RodKind::label).orElse("the rod") + " from its side";
        }
        return new Gives(
                say("{}", what),
                "crushes",
                force / (across * thick),
                strength,
                of,
                Words.number(force) + " N / (d t), t = " + Words.number(thick) + " mm");
    }

    /** Of a part's hole for this rod, N/mm². */
    private static Uncertain embedment(Part part, double diameter) {
        if (!part.kind().grain()) {
            return part.kind().strength().edgewise();
        }
        double sharp = embedment(diameter, 1000 * part.kind().density().value());
        return new Uncertain(
                sharp * CHARRED.value(),
                sharp * CHARRED.low(),
                sharp * CHARRED.high(),
                "N/mm2",
                Basis.GUESS,
                "EN 1995-1-1, 8.3.1.3, times " + CHARRED.value() + ": " + CHARRED.source());
    }

    /**
     * EN 1995-1-1, nails in plywood (8.20), N/mm².
     *
     * @param diameter mm
     * @param density kg/m³
     */
    static double embedment(double diameter, double density) {
        return 0.11 * (1 - 0.01 * diameter) * density;
    }
}
