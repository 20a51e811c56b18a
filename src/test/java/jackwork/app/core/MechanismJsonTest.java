package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What an outsider is given to rebuild a coin's visit: all explained, and as the design says. */
@Tag("quick")
class MechanismJsonTest {

    private static JsonNode of(Path folder) {
        return JsonMapper.builder().build().readTree(MechanismJson.of(DesignReader.read(folder)));
    }

    private static void keys(JsonNode node, Set<String> into) {
        if (node.isObject()) {
            into.addAll(node.propertyNames());
        }
        node.forEach(child -> keys(child, into));
    }

    /** Everything between backquotes counts; units are explained by themselves. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void everyKeyIsExplained(String demo) throws IOException {
        String told = Files.readString(Path.of("docs", "mechanism.md"));
        StringBuilder quoted = new StringBuilder();
        Pattern.compile("`[^`\n]+`").matcher(told).results().forEach(found -> quoted.append(found.group()));
        Set<String> keys = new TreeSet<>();
        JsonNode json = of(Path.of("demo", demo));
        keys(json, keys);
        keys.removeAll(json.get("units").propertyNames());
        assertThat(keys).hasSizeGreaterThan(80);
        assertThat(keys).allSatisfy(key -> assertThat(quoted.toString()).containsPattern("\\b" + key + "\\b"));
    }

    /** Whatever touches has an outline, in a layer that both are in, or the coin's. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler", "spoiled/kicker-short"})
    void whatTouchesIsThere(String demo) {
        JsonNode json = of(Path.of("demo").resolve(demo));
        Map<String, JsonNode> parts = new HashMap<>();
        json.get("touching").forEach(part -> parts.put(part.get("part").stringValue(), part));
        int coinLayer = json.get("coinWorks").get("layer").intValue();
        Set<String> met = new TreeSet<>();
        for (JsonNode contact : json.get("contacts")) {
            String a = contact.get("a").stringValue();
            String b = contact.get("b").stringValue();
            if (b.equals("coin")) {
                continue;
            }
            int layer = a.equals("coin") ? coinLayer : parts.get(a).get("layer").intValue();
            assertThat(parts.get(b).get("layer").intValue()).as(a + " on " + b).isEqualTo(layer);
            if (parts.get(b).has("radius")) {
                assertThat(b).contains(" of ");
                assertThat(parts.get(b).get("radius").doubleValue()).isPositive();
            } else {
                assertThat(parts.get(b).get("outline").size()).as(b).isGreaterThan(2);
            }
            met.add(a);
            met.add(b);
        }
        assertThat(met).containsAll(parts.keySet());
        assertThat(json.get("coins").size()).isPositive();
    }

    /** A peg goes with what carries it, and not with the part in whose slot it runs. */
    @Test
    void aPegGoesWithItsCarrier() throws IOException {
        Path hut = DemoCopy.here("heron");
        change(
                hut.resolve("boxes/marsh-box/box.yaml"),
                Map.of(
                        "\nweights:",
                        "\nslides:\n  peg: {part: lever, in: front, peg: peg-from, from: peg-from, via: peg-via, to: peg-to,"
                                + " rod: bamboo-3}\n\nweights:"));
        change(
                hut.resolve("boxes/marsh-box/box.svg"),
                Map.of(
                        "<circle id=\"origin\"",
                        "<circle id=\"peg-from\" cx=\"63\" cy=\"38\" r=\"1\"/><circle id=\"peg-via\" cx=\"63.2012\""
                                + " cy=\"34.7095\" r=\"1\"/><circle id=\"peg-to\" cx=\"63.802\" cy=\"31.4681\" r=\"1\"/>"
                                + "<circle id=\"origin\""));
        JsonNode json = of(hut.resolve("heron"));
        String carrier = json.get("slides").get(0).get("peg").stringValue();
        assertThat(carrier).isEqualTo(json.get("lever").get("body").stringValue());
        List<String> bodies = new ArrayList<>();
        json.get("touching").forEach(part -> {
            if (part.get("part").stringValue().equals("the rod of peg")) {
                bodies.add(part.get("body").stringValue());
            }
        });
        assertThat(bodies).containsExactly(carrier);
    }

    /** Numbers of the file come out where an outsider looks for them, whatever they are. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theFilesNumbersComeOut(long seed) throws IOException {
        Random random = new Random(seed);
        double rebound = 0.05 + 0.1 * random.nextDouble();
        double length = 26.5 + 2 * random.nextDouble();
        double mass = 20 + 10 * random.nextDouble();
        Path hut = DemoCopy.here("heron");
        change(
                hut.resolve("boxes/marsh-box/box.yaml"),
                Map.of(
                        "rebound: \\{value: 0.12, low: 0.05, high: 0.2",
                        String.format(Locale.ROOT, "rebound: {value: %.6f, low: 0.01, high: 0.3", rebound),
                        "length: 27",
                        String.format(Locale.ROOT, "length: %.6f", length)));
        change(hut.resolve("heron/figure.yaml"), Map.of("mass: 50", String.format(Locale.ROOT, "mass: %.6f", mass)));
        JsonNode json = of(hut.resolve("heron"));
        assertThat(json.get("coinWorks").get("slot").get("length").doubleValue())
                .isCloseTo(length, within(1e-6));
        String bucket = json.get("bucket").stringValue();
        int seen = 0;
        for (JsonNode contact : json.get("contacts")) {
            if (contact.get("a").stringValue().equals("coin")
                    && contact.get("b").stringValue().equals(bucket)) {
                assertThat(contact.get("rebound").doubleValue()).isCloseTo(rebound, within(1e-6));
                seen++;
            }
        }
        assertThat(seen).isEqualTo(1);
        JsonNode coin = json.get("coins").get(0);
        assertThat(coin.get("play").doubleValue())
                .isCloseTo(length - coin.get("diameter").doubleValue(), within(1e-6));
    }

    private static void change(Path file, Map<String, String> by) throws IOException {
        String text = Files.readString(file);
        for (Map.Entry<String, String> one : by.entrySet()) {
            String changed = text.replaceFirst(one.getKey(), one.getValue());
            assertThat(changed).as(one.getKey()).isNotEqualTo(text);
            text = changed;
        }
        Files.writeString(file, text);
    }

    /** Works of both kinds say which they are, with the marks that are theirs. */
    @Test
    void bucketAndGate() {
        JsonNode bucket = of(Path.of("demo/heron")).get("coinWorks");
        assertThat(bucket.get("kind").stringValue()).isEqualTo("bucket");
        assertThat(bucket.get("face").isNull()).isTrue();
        JsonNode gate = of(Path.of("demo/cobbler")).get("coinWorks");
        assertThat(gate.get("kind").stringValue()).isEqualTo("gate");
        assertThat(gate.get("face").isNull()).isFalse();
    }
}
