package jackwork.check;

import java.util.List;

/**
 * A cut across glued layers, bent in their plane: all of them as one section, since all are as stiff.
 *
 * @param area mm²
 * @param middle of it, along the cut, mm
 * @param second moment about that, mm⁴
 * @param edge from there to the farthest wood, mm
 */
record WoodSection(double area, double middle, double second, double edge) {

    /**
     * What a cut goes through of one layer.
     *
     * @param thickness of the layer, mm
     * @param from along the cut, mm
     * @param to likewise
     */
    record Strip(double thickness, double from, double to) {}

    static WoodSection of(List<Strip> strips) {
        double area = 0;
        double first = 0;
        for (Strip strip : strips) {
            double part = strip.thickness * (strip.to - strip.from);
            area += part;
            first += part * (strip.from + strip.to) / 2;
        }
        double middle = first / area;
        double second = 0;
        double edge = 0;
        for (Strip strip : strips) {
            double high = strip.to - strip.from;
            double off = (strip.from + strip.to) / 2 - middle;
            second += strip.thickness * (high * high * high / 12 + high * off * off);
            edge = Math.max(edge, Math.max(Math.abs(strip.from - middle), Math.abs(strip.to - middle)));
        }
        return new WoodSection(area, middle, second, edge);
    }

    /** I / c, mm³. */
    double modulus() {
        return second / edge;
    }

    /** Greatest, N/mm². */
    double stress(double along, double moment) {
        return Math.abs(along) / area + Math.abs(moment) / modulus();
    }

    /** Greatest, N/mm², as in a rectangle. */
    double shear(double across) {
        return 1.5 * Math.abs(across) / area;
    }
}
