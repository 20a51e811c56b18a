package jackwork.stock;

/**
 * What a rod's stuff bears, N/mm². Of wood and bamboo and of the metals alike a number for all sizes.
 *
 * @param bending where it breaks, or, of metal, where it stays bent
 * @param shear across the rod
 * @param crushing from the side, where the edge of a hole presses into it
 */
public record RodStrength(Uncertain bending, Uncertain shear, Uncertain crushing) {

    static RodStrength of(Table.Row row) {
        return new RodStrength(row.strength("bending"), row.strength("shear"), row.strength("crushing"));
    }
}
