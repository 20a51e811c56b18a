package jackwork.stock;

import java.math.BigDecimal;

/**
 * A coin in circulation.
 *
 * @param code currency and denomination, {@code EUR-0.50}
 * @param diameter greatest width, mm
 * @param thickness mm; published figures are nominal
 * @param mass g
 * @param leastAcross smallest width across, mm; the diameter when round
 * @param round false for coins with sides; they roll as their mean disc
 */
public record Coin(
        String code,
        String currency,
        BigDecimal denomination,
        double diameter,
        double thickness,
        double mass,
        double leastAcross,
        boolean round,
        String shape,
        String material,
        String magnetic,
        String source,
        String status)
        implements Catalogue.Entry {

    static Coin of(Table.Row row) {
        return new Coin(
                row.text("code"),
                row.text("currency"),
                new BigDecimal(row.text("denomination")),
                row.number("diameter_mm"),
                row.number("thickness_mm"),
                row.number("mass_g"),
                row.number("least_across_mm"),
                row.flag("round"),
                row.text("shape"),
                row.text("material"),
                row.text("magnetic"),
                row.text("source"),
                row.text("status"));
    }

    @Override
    public String name() {
        return code;
    }

    /** Radius of the disc that stands for it in the mechanism's plane, mm. */
    public double radius() {
        return (diameter + leastAcross) / 4;
    }

    /** Mass over the enclosing cylinder, g/cm³: below the alloy's, since rims stand up. */
    public double apparentDensity() {
        return mass / (Math.PI / 4 * diameter * diameter * thickness) * 1000;
    }
}
