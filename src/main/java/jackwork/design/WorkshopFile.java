package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.List;
import java.util.Map;

/**
 * {@code workshop.yaml}: machines, stock and the workshop's own numbers.
 *
 * @param sheets by the names designs use for them
 * @param rods likewise
 * @param friction pairs measured here; the catalogue's values serve for the rest
 */
@About("A workshop: its laser, sheets, rods, fits, friction and finger.")
public record WorkshopFile(
        int format,
        String name,
        String currency,
        Laser laser,
        Map<String, SheetEntry> sheets,
        Map<String, RodEntry> rods,
        Map<String, CordEntry> cords,
        Fits fits,
        List<FrictionEntry> friction,
        Finger finger) {

    /**
     * @param bed width and height that it can cut, mm
     * @param kerf width of the cut, mm
     * @param margin bare edge kept on every sheet, mm
     * @param gap between parts, mm
     */
    public record Laser(
            @Unit("mm") List<Double> bed,
            @Unit("mm") Uncertain kerf,
            @Unit("mm") double margin,
            @Unit("mm") double gap) {}

    /**
     * @param kind a sheet of the catalogue
     * @param thickness as measured, mm
     * @param size width and height as bought, mm
     */
    public record SheetEntry(
            String kind,
            @Unit("mm") Uncertain thickness,
            @Unit("mm") List<Double> size) {}

    /**
     * @param kind a rod of the catalogue
     * @param diameter mm
     */
    public record RodEntry(String kind, @Unit("mm") Uncertain diameter) {}

    /**
     * @param diameter mm
     * @param holds pull at which it breaks or its knot slips, N
     */
    public record CordEntry(
            @Unit("mm") Uncertain diameter, @Unit("N") Uncertain holds) {}

    /**
     * Diametral clearance of a hole on its rod, mm; negative grips.
     *
     * @param running turns freely
     * @param press grips the rod
     */
    public record Fits(
            @Unit("mm") Uncertain running, @Unit("mm") Uncertain press) {}

    /**
     * @param between two materials
     * @param coefficient of dry friction
     */
    public record FrictionEntry(
            List<String> between, @Unit("1") Uncertain coefficient) {}

    /**
     * @param comfortable most force that a visitor should need, N
     * @param strongest most force that a child may put on it, N
     */
    public record Finger(
            @Unit("N") Uncertain comfortable, @Unit("N") Uncertain strongest) {}
}
