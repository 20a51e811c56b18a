package jackwork.stock;

/**
 * A nut or washer used as a weight.
 *
 * @param across across flats (nut) or outside diameter (washer), mm
 * @param height mm
 * @param hole nominal thread or hole diameter, mm
 * @param mass g
 */
public record Fastener(String name, String kind, double across, double height, double hole, Uncertain mass)
        implements Catalogue.Entry {}
