package jackwork.cli;

import jackwork.builds.BuildResult;
import jackwork.builds.BuildRun;
import jackwork.builds.Cause;
import jackwork.builds.Replay;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.design.WholeFile;
import jackwork.parts.Assembler;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code jackwork replay DESIGN --build K}. */
@Command(name = "replay", description = "One virtual build again, as a picture that moves in any browser.")
final class ReplayCommand extends DesignCommand {

    @Option(names = "--build", paramLabel = "K", required = true, description = "its number in that run, from 0")
    private int build;

    @Option(names = "--builds", paramLabel = "N", description = "how many builds that run had; 1000 when absent")
    private int builds = 1000;

    @Option(names = "--seed", paramLabel = "S", description = "of that run; 1 when absent")
    private long seed = 1;

    @Option(names = "--coin", paramLabel = "COIN", description = "the first that fails when absent, else the first")
    private String coin = "";

    @Option(names = "-o", paramLabel = "FILE", description = "replay.svg when absent")
    private Path out = Path.of("replay.svg");

    @Override
    public Integer call() throws IOException {
        Design read = DesignReader.read(design);
        List<Coin> coins = new ArrayList<>();
        for (String code : coin.isEmpty() ? read.file().coins() : List.of(coin)) {
            coins.add(Coins.catalogue()
                    .find(code)
                    .orElseThrow(() -> new BadInputException("--coin reads " + code + ", which is not in the catalogue;"
                            + " `jackwork coins` lists them")));
        }
        BuildRun run = new BuildRun(Assembler.assemble(read), coins, builds, seed);
        if (build < 0 || build >= run.size()) {
            throw new BadInputException("--build reads " + build + ", expected 0 to " + (run.size() - 1));
        }
        Replay shown = null;
        BuildResult.Trial trial = null;
        for (Coin next : coins) {
            Replay replay = new Replay(run.assemblyOf(build), next);
            BuildResult.Trial result = run.replay(build, next, replay);
            if (shown == null || trial == null || (trial.passes() && !result.passes())) {
                shown = replay;
                trial = result;
            }
        }
        if (shown == null || trial == null) {
            throw new BadInputException("the design accepts no coin");
        }
        String words = trial.coin() + " in build " + build + ": "
                + (trial.computed() ? trial.cause().map(Cause::words).orElse("all stages reached") : "not computed");
        System.out.println(words);
        Coin of = Coins.catalogue().find(trial.coin()).orElseThrow();
        String picture = trial.cause()
                .flatMap(cause -> run.across(build, of, cause, words))
                .orElse(null);
        WholeFile.write(out, picture == null ? shown.svg(words) : picture);
        System.out.println("written to " + out);
        return Outcome.FINE;
    }
}
