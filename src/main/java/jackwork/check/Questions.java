package jackwork.check;

import jackwork.geometry.Wanted;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Every question asked of a piece: its motion, coin works, case, rods, pictures. A new one is one class and one line here. */
public final class Questions {

    private static final List<Question> ALL = List.of(
            new UnusualNumbers(),
            new FrictionUsed(),
            new CoinMoney(),
            new StaysTogether(),
            new WhatStops(),
            new FullStroke(),
            new LocksByFriction(),
            new ComesBack(),
            new RunsAhead(),
            new FingerForce(),
            new GestureReached(),
            new ArmPlay(),
            new StringsPull(),
            new ClothSpans(),
            new SpringsAct(),
            new ClothCut(),
            new RiderStays(),
            new PartsClash(),
            new PinsBear(),
            new RodsTurn(),
            new RodsHeld(),
            new RodsApart(),
            new RodsPass(),
            new HolesInWood(),
            new PartsShare(),
            new HangsTogether(),
            new LayersFilled(),
            new JointsAct(),
            new WheelsCentred(),
            new EndsHeld(),
            new PrintsFit(),
            new PegsInSlots(),
            new PicturesLie(),
            new WeightsLie(),
            new WeightsFit(),
            new WeightsHeavy(),
            new GesturesMarked(),
            new WorksMarked(),
            new WorksOrdered(),
            new ToothShapes(),
            new TeethStay(),
            new PawlMeets(),
            new PawlSteps(),
            new CamShapes(),
            new SlotPlaced(),
            new CoinLed(),
            new CoinFalls(),
            new CoinFitsSlot(),
            new CoinLeans(),
            new CoinLands(),
            new CoinTrips(),
            new CoinBridges(),
            new GateOpens(),
            new BucketResets(),
            new BucketTwist(),
            new CatchFrees(),
            new CatchOverlap(),
            new CatchHolds(),
            new PivotsBearPress(),
            new PostBearsPress(),
            new WoodBearsPress(),
            new EndBearsPress(),
            new LeansAlong(),
            new LeansAcross(),
            new HeapGrows(),
            new CashRoomFits(),
            new WorksInCase(),
            new CaseFitsSheet(),
            new DoorInWall(),
            new PressReached(),
            new ScrewsHold());

    private static final Comparator<Finding> WORST_FIRST =
            Comparator.comparing(Finding::status).reversed();

    private Questions() {}

    /** All findings, worst first, else in the order of the list; asked on all cores. */
    public static List<Finding> ask(Subject subject) {
        subject.solveEnds();
        return ALL.parallelStream()
                .filter(question -> question.appliesTo(subject))
                .flatMap(question -> {
                    Wanted.goOn();
                    return question.ask(subject).stream();
                })
                .map(Questions::withMeasurement)
                .sorted(WORST_FIRST)
                .toList();
    }

    /** Those that are answered at once, of a subject as numbered: no spread, nothing that looks at every pair of parts. */
    public static List<Finding> askQuickly(Subject subject) {
        return ALL.stream()
                .filter(question -> question.isQuick() && question.appliesTo(subject))
                .flatMap(question -> question.ask(subject).stream())
                .sorted(WORST_FIRST)
                .toList();
    }

    /** How many of the largest coin heap up before they reach the bucket; null where the design does not tell its cash room. */
    public static @Nullable Double coinsHeld(Subject subject) {
        return new HeapGrows()
                .ask(subject).stream().map(Finding::value).findFirst().orElse(null);
    }

    /** A doubt also says which short measurement would settle most of it. */
    private static Finding withMeasurement(Finding finding) {
        return finding.status() == Status.DOUBTFUL
                ? finding.withRemedy(Measurement.toSettle(finding.restsOn()))
                : finding;
    }
}
