package jackwork.check;

import jackwork.design.Design;
import jackwork.design.GestureEntry;
import jackwork.design.Named;
import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.model.MechanismException;
import jackwork.motion.rest.StrokeResult;
import jackwork.motion.rest.StrokeSolver;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.RodRun;
import jackwork.parts.Variation;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;

/** A design, solved over its stroke, and solved again with each uncertain number at its ends. */
public final class Subject {

    /** Poses shown and reported. */
    public static final int SAMPLES = 201;
    /** Enough to see a force's least and greatest when only its change matters. */
    private static final int COARSE = 41;

    private final Design design;
    private final Assembly assembly;
    private final StrokeResult stroke;
    private final List<Variation> variations;
    /** As they would be with one number at one end, by {@link #key}: many questions ask of the same. */
    private final Map<String, Assembly> changed = new ConcurrentHashMap<>();

    private final Map<String, StrokeResult> varied = new ConcurrentHashMap<>();

    private Subject(Design design, int samples, boolean varied) {
        this.design = design;
        this.assembly = Assembler.assemble(design);
        this.stroke = StrokeSolver.solve(compiled(design, assembly), samples);
        this.variations = varied ? Variation.of(assembly) : List.of();
    }

    /** @throws jackwork.motion.model.MechanismException when the lever does not decide where every part is */
    public static Subject of(Design design) {
        return new Subject(design, SAMPLES, true);
    }

    /**
     * As numbered alone, without spread and with fewer poses: for what is asked many times a second.
     *
     * @throws jackwork.motion.model.MechanismException when the lever does not decide where every part is
     */
    public static Subject asNumbered(Design design) {
        return new Subject(design, COARSE, false);
    }

    /** What cannot be moved is told with its place in the files, which the engine knows nothing of. */
    private static Mechanism compiled(Design design, Assembly assembly) {
        try {
            return MechanismCompiler.compile(assembly);
        } catch (MechanismException e) {
            throw design.placeOf(e.about()).map(e::at).orElse(e);
        }
    }

    public Design design() {
        return design;
    }

    /** Every rod and screw, where it stands at rest. */
    List<RodRun> rods() {
        return assembly.rods();
    }

    public Assembly assembly() {
        return assembly;
    }

    public StrokeResult stroke() {
        return stroke;
    }

    /** The same with every bearing dragging as expected. */
    StrokeResult draggedStroke() {
        return varied.computeIfAbsent(
                "drag", k -> StrokeSolver.solve(MechanismCompiler.compile(PivotDrag.in(assembly)), COARSE));
    }

    public Mechanism mechanism() {
        return stroke.mechanism();
    }

    /** Coins the design must take. */
    public List<Coin> coins() {
        return coins(design);
    }

    /** Coins that a design must take. */
    public static List<Coin> coins(Design design) {
        List<Coin> coins = new ArrayList<>();
        for (String code : design.file().coins()) {
            coins.add(Coins.catalogue()
                    .find(code)
                    .orElseThrow(() -> new IllegalStateException("coin " + code + " was not checked on reading")));
        }
        return coins;
    }

    Map<String, GestureEntry> gestures() {
        return design.file().gestures();
    }

    /** A gesture's watched point, in the common frame. */
    Point watched(String gesture) {
        GestureEntry entry = Named.in(gestures(), gesture);
        if (design.box().works().parts().containsKey(entry.part())) {
            return design.inBox(entry.point(), gesture);
        }
        return design.inFigure(entry.point(), gesture);
    }

    /** Spread of a margin that depends on the solved stroke. */
    Spread strokeSpread(ToDoubleFunction<StrokeResult> margin) {
        Spread spread = new Spread(margin.applyAsDouble(stroke));
        // A stroke that ends short has its own finding; what the numbers do to it tells nothing.
        for (Variation variation : stroke.reach() < 1 ? List.<Variation>of() : variations) {
            spread.add(variation.name(), variation.number(), v -> margin.applyAsDouble(solved(variation, v)));
        }
        return spread;
    }

    /** Spread of a margin that depends on masses and friction alone. */
    Spread balanceSpread(ToDoubleFunction<Assembly> margin) {
        Spread spread = new Spread(margin.applyAsDouble(assembly));
        for (Variation variation : variations) {
            spread.add(variation.name(), variation.number(), v -> margin.applyAsDouble(changed(variation, v)));
        }
        return spread;
    }

    private StrokeResult solved(Variation variation, double value) {
        Assembly other = changed(variation, value);
        return varied.computeIfAbsent(
                key(variation, value), k -> StrokeSolver.solve(MechanismCompiler.compile(other), COARSE));
    }

    private Assembly changed(Variation variation, double value) {
        return changed.computeIfAbsent(
                key(variation, value), k -> variation.with().apply(assembly, value));
    }

    private static String key(Variation variation, double value) {
        return variation.name() + "=" + value;
    }

    /** Solves the stroke with each number at each end, on all cores: most questions of motion ask for all of them. */
    void solveEnds() {
        if (stroke.reach() < 1) {
            return;
        }
        draggedStroke();
        variations.parallelStream().forEach(variation -> {
            solved(variation, variation.number().low());
            solved(variation, variation.number().high());
        });
    }
}
