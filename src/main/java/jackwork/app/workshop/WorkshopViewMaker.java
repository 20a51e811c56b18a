package jackwork.app.workshop;

import jackwork.check.Measurement;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.design.WorkshopSplice;
import jackwork.design.WorkshopValues;
import jackwork.drawing.Paper;
import jackwork.price.KnownNumber;
import jackwork.stock.FrictionPair;
import jackwork.stock.Frictions;
import jackwork.stock.Rods;
import jackwork.stock.Sheets;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Every value of a {@code workshop.yaml}, put where a maker looks for it. */
final class WorkshopViewMaker {

    /**
     * Where a value belongs.
     *
     * @param about what belongs here
     * @param first words that the paths of its values begin with
     */
    private record Place(String id, String title, String about, List<String> first) {}

    private static final List<Place> PLACES = List.of(
            new Place("workshop", "The workshop", "", List.of("name", "currency", "paper", "maker", "contact")),
            new Place("sheets", "Sheets", "As they lie in store, under the names that designs use.", List.of("sheets")),
            new Place("rods", "Rods", "As they lie in store, under the names that designs use.", List.of("rods")),
            new Place("cords", "Cords", "As they lie in store, under the names that designs use.", List.of("cords")),
            new Place("fits", "Fits", "How much wider than its rod a hole is drawn.", List.of("fits")),
            new Place(
                    "friction",
                    "Friction",
                    "Measured here, where it was; the catalogue's value elsewhere.",
                    List.of("friction")),
            new Place("laser", "Laser", "Never leave one cutting alone; mind fumes, fire and eyes.", List.of("laser")),
            new Place("printer", "3D printer", "", List.of("printer")),
            new Place("finger", "Fingers", "Of those who press.", List.of("finger")),
            new Place(
                    "use",
                    "Pieces in use",
                    "What happens to a piece, and what the drawings do not say of it.",
                    List.of("handling")),
            new Place("shelf", "On the shelf", "The shopping list leaves out what is here.", List.of("have")),
            new Place(
                    "minutes",
                    "Minutes",
                    "Of hands, for one of each; time yours and write them here.",
                    List.of("times")),
            new Place(
                    "hands",
                    "Hours and money",
                    "",
                    List.of(
                            "pay.wage",
                            "pay.on-costs",
                            "pay.productive",
                            "pay.overhead",
                            "pay.profit",
                            "pay.energy",
                            "pay.offcut",
                            "pay.learning",
                            "pay.design")),
            new Place("machines", "What machines cost", "", List.of("pay.laser", "pay.printer")),
            new Place("prices", "What stock costs", "As paid, VAT in it.", List.of("pay.prices")),
            new Place("tax", "VAT", "Local rules decide; ask the local office.", List.of("pay.vat")),
            new Place("yields", "How much comes out good", "", List.of("pay.yields")),
            new Place(
                    "channels",
                    "Ways to the buyer",
                    "One of each kind is assumed until you name yours.",
                    List.of("pay.channels")),
            new Place(
                    "bands",
                    "Price bands",
                    "What people pay for a thing of this kind, lowest first.",
                    List.of("pay.bands")),
            new Place("ways", "Other ways of selling", "", List.of("pay.ways")),
            new Place("quicker", "What quicker ways of making cost", "", List.of("pay.quicker")));

    /** Entries that the maker names and can take out whole; what follows in the path is within one. */
    private static final Pattern OWN = Pattern.compile(
            "(sheets|rods|cords|laser\\.lines|pay\\.prices|pay\\.channels\\.[a-z]+|pay\\.bands)\\.([^.]+)(?:\\..*)?");
    /** Values that stand alone and the workshop can be without. */
    private static final Pattern LOOSE = Pattern.compile("(paper|maker|contact)|(fits\\.push|laser\\.speeds|printer"
            + "|handling|have|times|friction|pay\\.(?!prices|channels|bands))(\\..*)?");

    private final WorkshopFile workshop;
    private final String text;
    private final Map<String, Map<String, List<WorkshopView.Value>>> groups = new LinkedHashMap<>();
    private final Map<String, String> whole = new LinkedHashMap<>();

    private WorkshopViewMaker(String text) {
        this.text = text;
        this.workshop = WorkshopReader.parse(text);
    }

    static List<WorkshopView.Section> of(String text) {
        return new WorkshopViewMaker(text).sections();
    }

    private List<WorkshopView.Section> sections() {
        for (WorkshopValues.Value value : WorkshopValues.of(workshop)) {
            if (!value.path().startsWith("friction.")) {
                add(value.path(), plain(value));
            }
        }
        friction();
        money();
        List<WorkshopView.Section> sections = new ArrayList<>();
        for (Place place : PLACES) {
            List<WorkshopView.Group> inPlace = new ArrayList<>();
            groups.getOrDefault(place.id(), Map.of())
                    .forEach((name, values) -> inPlace.add(new WorkshopView.Group(
                            name, whole.getOrDefault(place.id() + name, ""), List.copyOf(values))));
            sections.add(new WorkshopView.Section(place.id(), place.title(), place.about(), inPlace));
        }
        return sections;
    }

    private void add(String path, WorkshopView.Value value) {
        Place place = place(path);
        Matcher own = OWN.matcher(path);
        String group;
        if (own.matches()) {
            group = own.group(2);
            if (own.group(1).equals("pay.bands")) {
                group = "band " + (1 + Integer.parseInt(group));
            } else if (own.group(1).startsWith("pay.channels.")) {
                group += ", " + last(own.group(1));
            }
            String entry = own.group(1) + "." + own.group(2);
            if (WorkshopSplice.says(text, entry)) {
                whole.putIfAbsent(place.id() + group, entry);
            }
        } else {
            group = within(place, path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "");
        }
        groups.computeIfAbsent(place.id(), p -> new LinkedHashMap<>())
                .computeIfAbsent(group, g -> new ArrayList<>())
                .add(value);
    }

    private static Place place(String path) {
        return PLACES.stream()
                .filter(place ->
                        place.first().stream().anyMatch(word -> path.equals(word) || path.startsWith(word + ".")))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no place for " + path));
    }

    /** Name of a part of a place; nothing for what belongs to it directly. */
    private static String within(Place place, String above) {
        boolean alone = above.isEmpty() || above.equals("pay") || place.first().equals(List.of(above));
        return alone ? "" : last(above);
    }

    private WorkshopView.Value plain(WorkshopValues.Value value) {
        Uncertain number = value.number();
        return new WorkshopView.Value(
                value.path(),
                words(value.path()),
                value.about(),
                WorkshopView.ValueKind.valueOf(value.kind().name()),
                unit(value.unit(), value.path()),
                value.words(),
                number == null ? null : known(number),
                value.written() && !value.words().isEmpty(),
                value.written() && !value.words().isEmpty() && mayGo(value.path()),
                choices(value.path()),
                how(last(value.path())));
    }

    /** Every pair that the catalogue knows or the workshop measured. */
    private void friction() {
        List<FrictionPair> pairs = new ArrayList<>();
        for (WorkshopFile.FrictionEntry entry : workshop.friction()) {
            pairs.add(new FrictionPair(entry.between().get(0), entry.between().get(1), entry.coefficient(), ""));
        }
        int own = pairs.size();
        for (FrictionPair pair : Frictions.catalogue().all()) {
            if (pairs.stream().limit(own).noneMatch(mine -> same(mine, pair))) {
                pairs.add(pair);
            }
        }
        for (int i = 0; i < pairs.size(); i++) {
            FrictionPair pair = pairs.get(i);
            String path = "friction." + pair.a() + "," + pair.b();
            add(
                    path,
                    number(path, pair.a() + " on " + pair.b(), "", "1", pair.coefficient(), i < own, how("friction")));
        }
    }

    private static boolean same(FrictionPair one, FrictionPair other) {
        return (one.a().equals(other.a()) && one.b().equals(other.b()))
                || (one.a().equals(other.b()) && one.b().equals(other.a()));
    }

    /** Minutes and money: the workshop's own, the catalogues' guesses for the rest. */
    private void money() {
        for (KnownNumber known : KnownNumber.of(workshop)) {
            String path = known.name().startsWith("times.") ? known.name() : "pay." + known.name();
            if (path.startsWith("pay.channels.")
                    && !WorkshopSplice.says(text, path.substring(0, path.lastIndexOf('.')))) {
                continue; // assumed only until the maker names one
            }
            boolean written = WorkshopSplice.says(text, path);
            Uncertain number = known.number();
            if (number.unit().equals("yes or no")) {
                add(path, yesOrNo(path, known, written));
            } else {
                String unit = number.unit().equals("money") ? workshop.currency() : number.unit();
                String how = path.startsWith("times.") ? "time it over some pieces, and divide" : "";
                add(path, number(path, words(path), known.what(), unit, number, written, how));
            }
        }
    }

    private static WorkshopView.Value yesOrNo(String path, KnownNumber known, boolean written) {
        String words = known.number().value() == 0 ? "no" : "yes";
        return new WorkshopView.Value(
                path,
                words(path),
                known.what(),
                WorkshopView.ValueKind.YES_NO,
                "",
                words,
                null,
                written,
                written && mayGo(path),
                List.of("yes", "no"),
                "");
    }

    private static WorkshopView.Value number(
            String path, String name, String about, String unit, Uncertain number, boolean written, String how) {
        return new WorkshopView.Value(
                path,
                name,
                about,
                WorkshopView.ValueKind.NUMBER,
                unit,
                "",
                known(number),
                written,
                written && mayGo(path),
                List.of(),
                how);
    }

    private static WorkshopView.Known known(Uncertain number) {
        return new WorkshopView.Known(
                number.value(),
                number.low(),
                number.high(),
                number.basis().name().toLowerCase(java.util.Locale.ROOT),
                number.source());
    }

    /** What the number is of, for a maker's eye. */
    private String unit(String unit, String path) {
        return path.startsWith("pay.") && unit.equals("1") ? workshop.currency() : unit;
    }

    private static boolean mayGo(String path) {
        return LOOSE.matcher(path).matches()
                || path.startsWith("pay.channels.")
                || (path.startsWith("pay.prices.") && path.endsWith(".holds"));
    }

    private static List<String> choices(String path) {
        if (path.equals("paper")) {
            return Paper.ALL.stream().map(Paper::name).toList();
        }
        if (path.endsWith(".kind")) {
            return path.startsWith("sheets.")
                    ? Sheets.catalogue().names()
                    : Rods.catalogue().names();
        }
        return List.of();
    }

    private static String how(String word) {
        return Measurement.how(word, "");
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private static String words(String path) {
        return last(path).replace('-', ' ');
    }
}
