package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param stock a sheet of the workshop
 * @param layer counted from the back; parts of one layer share a plane
 * @param drawn id of its path when that is not the part's own name
 * @param printed name of the piece that it is printed with, as thick as its stock; parts of one body that name the same
 *     are printed in one; cut from the sheet when absent
 * @param plies how many alike are glued into it, one layer behind the other, this one foremost; one when absent
 * @param paint colour of its finish, {@code "#rrggbb"}; bare wood when absent
 */
@About(
        "A flat part: an outline of the drawing, cut from a stock or printed as thick, in a layer counted from the back.")
public record PartEntry(
        String stock,
        int layer,
        @Nullable String drawn,
        @Nullable String printed,
        @Nullable Integer plies,
        @Nullable String paint) {

    static final int MOST_PLIES = 9;

    public int pliesOrOne() {
        return plies == null ? 1 : plies;
    }

    /**
     * The name of one of its plies.
     *
     * @param ply counted from 1, which is the part itself
     */
    public static String ply(String part, int ply) {
        return ply == 1 ? part : part + "-ply-" + ply;
    }

    void check(String name, Works works, YamlFile yaml) {
        String path = "parts." + name + ".plies";
        if (!(pliesOrOne() >= 1 && pliesOrOne() <= MOST_PLIES)) {
            yaml.problem(path, "read " + plies + ", expected 1 to " + MOST_PLIES);
        } else if (pliesOrOne() > layer + 1 && layer >= 0) {
            yaml.problem(
                    path,
                    "read " + plies + ", but behind layer " + layer + " there is room for " + layer + " more at most");
        }
        for (int ply = 2; ply <= Math.min(pliesOrOne(), MOST_PLIES); ply++) {
            if (works.parts().containsKey(ply(name, ply))) {
                yaml.problem(path, "\"" + ply(name, ply) + "\" is a part of its own; its name is needed for a ply");
            }
        }
    }
}
