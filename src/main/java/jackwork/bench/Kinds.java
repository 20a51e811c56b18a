package jackwork.bench;

import java.util.List;
import java.util.Optional;

/** Every kind of entry; what others refer to comes first. */
public final class Kinds {

    public static final LogKind<Piece> PIECES = new PieceKind();
    public static final LogKind<Happening> HAPPENINGS = new HappeningKind();
    public static final LogKind<Taking> TAKINGS = new TakingKind();
    public static final LogKind<Trial> TRIALS = new TrialKind();
    public static final LogKind<Timing> TIMINGS = new TimingKind();
    public static final LogKind<Measured> MEASURED = new MeasuredKind();
    public static final LogKind<Prediction> PREDICTIONS = new PredictionKind();

    static final List<LogKind<?>> ALL = List.of(PIECES, HAPPENINGS, TAKINGS, TRIALS, TIMINGS, MEASURED, PREDICTIONS);

    private Kinds() {}

    public static List<String> names() {
        return ALL.stream().map(LogKind::name).toList();
    }

    public static Optional<LogKind<?>> named(String name) {
        return ALL.stream().filter(kind -> kind.name().equals(name)).findFirst();
    }
}
