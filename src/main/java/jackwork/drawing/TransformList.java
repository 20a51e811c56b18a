package jackwork.drawing;

import java.util.ArrayList;
import java.util.List;

/** The transform attribute: a list of functions, the first applied last (W3C SVG 1.1, 7.6). */
final class TransformList {

    private TransformList() {}

    static Affine of(SvgElement element) {
        for (String property : List.of("transform", "transform-origin")) {
            boolean inStyle = !element.property(property).equals(element.attribute(property));
            if (inStyle || (property.equals("transform-origin") && element.has(property))) {
                throw element.problem(property + " is given as a style property, which is not read;"
                        + " save as plain SVG 1.1, or write it as the attribute transform=\"...\"");
            }
        }
        NumberScanner scanner = new NumberScanner(element, "transform");
        Affine whole = Affine.IDENTITY;
        while (scanner.hasMore()) {
            String function = scanner.word();
            scanner.expect('(');
            List<Double> numbers = new ArrayList<>();
            while (scanner.hasNumber() && numbers.size() < 7) {
                numbers.add(scanner.number());
            }
            scanner.expect(')');
            whole = whole.after(function(element, function, numbers));
        }
        return whole;
    }

    private static Affine function(SvgElement element, String name, List<Double> n) {
        String form = name + " " + n.size();
        return switch (form) {
            case "matrix 6" -> new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
            case "translate 1" -> Affine.translation(n.get(0), 0);
            case "translate 2" -> Affine.translation(n.get(0), n.get(1));
            case "scale 1" -> Affine.scaling(n.get(0), n.get(0));
            case "scale 2" -> Affine.scaling(n.get(0), n.get(1));
            case "rotate 1" -> Affine.rotation(Math.toRadians(n.get(0)));
            case "rotate 3" ->
                Affine.translation(n.get(1), n.get(2))
                        .after(Affine.rotation(Math.toRadians(n.get(0))))
                        .after(Affine.translation(-n.get(1), -n.get(2)));
            case "skewX 1" -> new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0);
            case "skewY 1" -> new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0);
            default ->
                throw element.problem("transform has \"" + name + "\" with " + n.size()
                        + " numbers; expected matrix (6), translate (1 or 2), scale (1 or 2), rotate (1 or 3),"
                        + " skewX (1) or skewY (1)");
        };
    }
}
