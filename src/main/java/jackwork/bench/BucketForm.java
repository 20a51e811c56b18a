package jackwork.bench;

import jackwork.parts.Assembly;
import jackwork.stock.FrictionPair;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;

/**
 * Weights at which a bucket tips and falls back ({@link BucketByWeights}); each gives one coefficient of its bearing, which
 * is kept with them since it needs the design to be worked out.
 */
public final class BucketForm implements Form {

    private static final String COEFFICIENT = "coefficient";
    private static final String GIVE_OR_TAKE = "give-or-take";

    BucketForm() {}

    /** An entry of it. */
    public static Measured entry(
            Stamp stamp, Assembly assembly, double tips, double fallsBack, double arm, double step) {
        BucketByWeights read = BucketByWeights.of(assembly, tips, fallsBack, arm, step);
        FrictionPair pair = assembly.coinWorks().bearingFriction();
        List<Reading> readings = new ArrayList<>();
        readings.add(new Reading("tips", tips));
        readings.add(new Reading("falls-back", fallsBack));
        readings.add(new Reading("arm", arm));
        readings.add(new Reading("step", step));
        readings.add(new Reading(COEFFICIENT, read.coefficient()));
        readings.add(new Reading(GIVE_OR_TAKE, read.coefficientUncertainty()));
        return new Measured(stamp, "bucket", pair.a() + "," + pair.b(), readings);
    }

    @Override
    public String kind() {
        return "bucket";
    }

    @Override
    public List<String> names() {
        return List.of("tips", "falls-back", "arm", "step", COEFFICIENT, GIVE_OR_TAKE);
    }

    @Override
    public void check(Measured measured) {
        FrictionForm.surfaces(measured.about());
        Forms.requireStep(measured);
        if (!(measured.one(COEFFICIENT) >= 0 && measured.one(GIVE_OR_TAKE) >= 0)) {
            throw new IllegalArgumentException("a coefficient is less than 0, expected 0 or more");
        }
    }

    @Override
    public Uncertain of(List<Measured> same) {
        double coarsest = Forms.coarsest(same, measured -> measured.one(GIVE_OR_TAKE));
        Uncertain read = Readings.of(Forms.all(same, COEFFICIENT), 2 * coarsest, "1", "weights laid into buckets");
        return new Uncertain(
                read.value(), Math.max(0, read.low()), read.high(), read.unit(), read.basis(), read.source());
    }

    @Override
    public String place(String about) {
        return new FrictionForm().place(about);
    }

    @Override
    public String edit(String workshop, String about, Uncertain value) {
        return new FrictionForm().edit(workshop, about, value);
    }
}
