package jackwork.motion.coin;

import jackwork.design.DesignReader;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.rest.StrokeResult;
import jackwork.motion.rest.StrokeSolver;
import jackwork.motion.time.Press;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * The bits of one stroke and one cycle of each demo, as known: a digest of each quantity, and the sum of its
 * numbers to see by how much they moved. Run {@link #main} to renew the file, and say in the commit why they moved.
 */
final class KnownBits {

    static final List<String> DEMOS = List.of("heron", "lamplighter", "windmill", "cobbler");
    static final Path FILE = Path.of("src", "test", "resources", "jackwork", "motion", "known-bits.csv");

    private static final int SAMPLES = 41;

    /**
     * One quantity.
     *
     * @param digest SHA-256 of its doubles' bits, in order
     * @param sum of its numbers that are finite, one after the other
     */
    record Known(String digest, String sum) {}

    private KnownBits() {}

    /** Writes the file anew. */
    public static void main(String[] arguments) throws IOException {
        StringBuilder text = new StringBuilder()
                .append("# Bits of one stroke and one cycle of each demo; renewed by jackwork.motion.coin.KnownBits.\n")
                .append("# sine, power and the like are Java's own and may end in other bits elsewhere: held on\n")
                .append("# platform,")
                .append(platform())
                .append('\n')
                .append("# made with Java ")
                .append(System.getProperty("java.vm.version"))
                .append('\n')
                .append("# design,quantity,sha256,sum\n");
        for (String demo : DEMOS) {
            now(demo)
                    .forEach((quantity, known) -> text.append(demo)
                            .append(',')
                            .append(quantity)
                            .append(',')
                            .append(known.digest())
                            .append(',')
                            .append(known.sum())
                            .append('\n'));
        }
        Files.writeString(FILE, text);
    }

    /** What the last bits hang on, as far as is known: Java's version, the system and the processor's kind. */
    static String platform() {
        return Stream.of("java.specification.version", "os.name", "os.arch")
                .map(System::getProperty)
                .reduce((a, b) -> a + " " + b)
                .orElseThrow();
    }

    /** The platform that the file is held on. */
    static String keptPlatform() throws IOException {
        return Files.readAllLines(FILE).stream()
                .filter(line -> line.startsWith("# platform,"))
                .map(line -> line.split(",", 2)[1])
                .findFirst()
                .orElseThrow();
    }

    /** A demo's quantities, as kept. */
    static Map<String, Known> kept(String demo) throws IOException {
        Map<String, Known> kept = new LinkedHashMap<>();
        for (String line : Files.readAllLines(FILE)) {
            String[] cells = line.split(",");
            if (cells[0].equals(demo)) {
                kept.put(cells[1], new Known(cells[2], cells[3]));
            }
        }
        return kept;
    }

    /** A demo's quantities, as they come out now. */
    static Map<String, Known> now(String demo) {
        Assembly assembly = Assembler.assemble(DesignReader.read(Path.of("demo", demo)));
        Map<String, Known> now = new LinkedHashMap<>();
        StrokeResult stroke = StrokeSolver.solve(MechanismCompiler.compile(assembly), SAMPLES);
        now.put("stroke poses", known(flat(stroke.pose())));
        now.put("stroke poses back", known(flat(stroke.returnPose())));
        now.put("press force", known(stroke.pressForce()));
        now.put("return force", known(stroke.returnForce()));
        now.put("row forces", known(flat(stroke.rowLoad())));
        List<Double> states = new ArrayList<>();
        CycleResult cycle = CoinCycle.run(
                CycleRig.of(assembly, 0, 0),
                new CoinDrop(7.5, 11.625, 0, 0, 0.35, 0.3, 0.12),
                new Press(6, 150),
                (time, pose) -> {
                    states.add(time);
                    DoubleStream.of(pose).forEach(states::add);
                });
        now.put("cycle states", known(states.stream().mapToDouble(d -> d).toArray()));
        now.put(
                "stage times",
                known(cycle.times().values().stream().mapToDouble(d -> d).toArray()));
        return now;
    }

    private static double[] flat(double[][] rows) {
        return Stream.of(rows).flatMapToDouble(DoubleStream::of).toArray();
    }

    private static Known known(double[] numbers) {
        ByteBuffer bytes = ByteBuffer.allocate(8 * numbers.length);
        for (double number : numbers) {
            // One NaN for all: which of them it is says nothing.
            bytes.putLong(Double.doubleToLongBits(number));
        }
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes.array());
            double sum = DoubleStream.of(numbers).filter(Double::isFinite).reduce(0, Double::sum);
            return new Known(HexFormat.of().formatHex(digest), Double.toString(sum));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
