package jackwork.design;

import jackwork.design.Adjustable.Setting;
import java.util.List;
import java.util.Map;

/** Whether what adjusters change is there, and may be what they make of it. */
final class AdjusterReferences {

    private AdjusterReferences() {}

    static void check(Design design, YamlFile yaml) {
        Map<String, AdjusterEntry> adjusters = design.file().adjusters();
        if (adjusters.isEmpty()) {
            return;
        }
        List<Setting> numbers = Adjustable.of(design).numbers();
        adjusters.forEach((name, adjuster) -> check("adjusters." + name, adjuster, numbers, yaml));
    }

    private static void check(String path, AdjusterEntry adjuster, List<Setting> numbers, YamlFile yaml) {
        String number = adjuster.number();
        if (numbers.stream().noneMatch(setting -> setting.path().equals(number))) {
            List<String> known = numbers.stream().map(Setting::path).toList();
            yaml.problem(
                    path + ".number",
                    "read \"" + number + "\", expected a number of the box or figure, as in figure.weights.tail.mass"
                            + NearestWord.hint(number, known));
            return;
        }
        Setting setting = numbers.stream()
                .filter(one -> one.path().equals(number))
                .findFirst()
                .orElseThrow();
        if (adjuster.down() + adjuster.up() == 0) {
            yaml.problem(path, "read no step, down or up; expected at least one");
        }
        if (setting.whole() && adjuster.step() != Math.rint(adjuster.step())) {
            yaml.problem(
                    path + ".step",
                    "read " + adjuster.step() + ", but " + number + " counts things; expected a whole number");
        }
    }
}
