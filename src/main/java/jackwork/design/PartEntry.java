package jackwork.design;

import org.jspecify.annotations.Nullable;

@About(
        "A flat part: an outline of the drawing, cut from a stock or printed as thick, in a layer counted from the back.")
public record PartEntry(
        @About("The sheet it is cut from.") @Names(NameKind.SHEET)
        String stock,

        @About("Counted from the back; parts of one layer share a plane.")
        @Quantity(
                least = 0,
                most = 99,
                usualTo = 40,
                why = "layers are counted from 0 at the back, and a box is no thicker than a hand's breadth or two")
        int layer,

        @About("The id of its outline when that is not the part's own name.") @Names(NameKind.OUTLINE) @Nullable
        String drawn,

        @About(
                "The piece that it is printed with, as thick as its stock; parts of one body that name the same are printed "
                        + "in one; cut from the sheet when left out.")
        @Text
        @Nullable
        String printed,

        @About("How many alike are glued into it, one layer behind the other, this one foremost; 1 when left out.")
        @Quantity(least = 1, most = PartEntry.MOST_PLIES, why = "more are a block, not a stack")
        @Nullable
        Integer plies,

        @About("The colour of its finish, \"#rrggbb\"; bare wood when left out.") @Text @Nullable
        String paint)
        implements Entry {

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

    @Override
    public void check(String path, Around around) {
        String name = path.substring(path.indexOf('.') + 1);
        if (!name.matches("[A-Za-z][A-Za-z0-9-]*") || name.equals(References.GROUND)) {
            around.problem(
                    path,
                    "a part cannot be called \"" + name
                            + "\"; expected a word of letters, digits and hyphens, other than \"box\"");
        }
        boolean made = around.works().madeOutlines().contains(name);
        if (drawn == null && !made && !around.drawing().outlines().containsKey(name)) {
            around.problem(
                    path,
                    "the drawing has no closed outline with id \"" + name + "\""
                            + NearestWord.hint(name, around.drawing().outlines().keySet()));
        }
        if (paint != null && !paint.matches("#[0-9A-Fa-f]{6}")) {
            around.problem(path + ".paint", "read \"" + paint + "\", expected a colour as \"#rrggbb\"");
        }
        checkPlies(name, path + ".plies", around);
    }

    private void checkPlies(String name, String path, Around around) {
        if (pliesOrOne() > layer + 1) {
            around.problem(
                    path,
                    "read " + plies + ", but behind layer " + layer + " there is room for " + layer + " more at most");
        }
        for (int ply = 2; ply <= pliesOrOne(); ply++) {
            if (around.works().parts().containsKey(ply(name, ply))) {
                around.problem(path, "\"" + ply(name, ply) + "\" is a part as well; its name is needed for a ply");
            }
        }
    }
}
