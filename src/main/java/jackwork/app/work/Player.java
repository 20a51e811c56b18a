package jackwork.app.work;

import jackwork.app.core.SceneMaker;
import jackwork.app.core.Shown;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Json;
import jackwork.builds.BuildRun;
import jackwork.builds.Cause;
import jackwork.builds.Watched;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.util.ArrayList;
import java.util.List;

/** Lets a coin into a design, or into one of its virtual builds, and tells every movement. */
public final class Player {

    /** Builds of a run that may be asked about. */
    private static final int MOST_BUILDS = 20_000;

    private final Workbench workbench;

    public Player(Workbench workbench) {
        this.workbench = workbench;
    }

    /** The coins of the design's currencies, those first that it takes. */
    public String trayJson(String id) {
        Design design = workbench.design(id);
        List<String> taken = design.file().coins();
        List<String> currencies =
                taken.stream().map(code -> coin(code).currency()).distinct().toList();
        List<Tray.TrayCoin> coins = new ArrayList<>();
        taken.forEach(code -> coins.add(tray(coin(code), true)));
        Coins.catalogue().names().stream()
                .filter(code ->
                        !taken.contains(code) && currencies.contains(coin(code).currency()))
                .forEach(code -> coins.add(tray(coin(code), false)));
        return Json.compact(new Tray(coins));
    }

    private static Tray.TrayCoin tray(Coin coin, boolean taken) {
        return new Tray.TrayCoin(
                coin.code(), coin.currency(), coin.denomination().toPlainString(), coin.diameter(), taken);
    }

    private static Coin coin(String code) {
        return Coins.catalogue()
                .find(code)
                .orElseThrow(
                        () -> new BadRequestException("read the coin \"" + code + "\", which is not in the catalogue"));
    }

    /** The design as numbered, with a coin let go in the middle of its slot. */
    public String dropJson(String id, String code) {
        Assembly assembly = Assembler.assemble(workbench.design(id));
        Coin coin = coin(code);
        Film film = new Film();
        Watched watched = BuildRun.watchNominal(assembly, coin, film);
        return Json.compact(film.developed(assembly, coin, watched, null, null));
    }

    /** One build of a run again, with the first coin that fails, else the first. */
    public String pieceJson(String id, int builds, long seed, int number) {
        Shown shown = shown(id, builds, seed, number);
        Assembly piece = shown.run().assemblyOf(number);
        String across = acrossOf(shown, number).isEmpty()
                ? null
                : "/api/across/" + id + "?builds=" + builds + "&seed=" + seed + "&number=" + number;
        return Json.compact(shown.film().developed(piece, shown.coin(), shown.watched(), SceneMaker.of(piece), across));
    }

    /** What lies out of the mechanism's plane in that build, as an SVG; empty where nothing does. */
    public String acrossSvg(String id, int builds, long seed, int number) {
        return acrossOf(shown(id, builds, seed, number), number);
    }

    private record Shown(BuildRun run, Coin coin, Film film, Watched watched) {}

    private Shown shown(String id, int builds, long seed, int number) {
        if (builds < 1 || builds > MOST_BUILDS || number < 0 || number >= builds) {
            throw new BadRequestException("read piece " + number + " of " + builds + ", expected one of a run");
        }
        Subject subject = Subject.asNumbered(workbench.design(id));
        BuildRun run = new BuildRun(subject.assembly(), subject.coins(), builds, seed);
        Shown shown = null;
        for (Coin coin : subject.coins()) {
            Film film = new Film();
            Watched watched = run.watch(number, coin, film);
            if (shown == null
                    || (shown.watched().trial().passes() && !watched.trial().passes())) {
                shown = new Shown(run, coin, film, watched);
            }
        }
        if (shown == null) {
            throw new BadRequestException("the design takes no coin");
        }
        return shown;
    }

    private static String acrossOf(Shown shown, int number) {
        return shown.watched()
                .trial()
                .cause()
                .flatMap(cause -> picture(shown, number, cause))
                .orElse("");
    }

    private static java.util.Optional<String> picture(Shown shown, int number, Cause cause) {
        return shown.run().across(number, shown.coin(), cause, cause.words());
    }
}
