package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

@About("A string from part to part: it pulls only.")
public record StringEntry(
        @About("The cord.") @Names(NameKind.CORD) String cord,

        @About("Where it is tied.") PointOf from,

        @About("What it runs over, in order.") List<GuideEntry> over,

        @About("Where its other end is tied.") PointOf to,

        @About("How much longer it is than its path as drawn; 0 when left out.")
        @Quantity(unit = "mm", least = 0, most = 2000, usualTo = 150, why = "a string is not shorter than its path")
        @Nullable
        Double slack)
        implements JointEntry {

    @About("A post or an eyelet that a string runs over.")
    public record GuideEntry(
            @About("The part that carries it.") @Names(value = NameKind.PART, orGround = true)
            String part,

            @About("Its centre.") Place at,

            @About("The rod of a round post; an eyelet when left out.") @Names(NameKind.ROD) @Nullable
            String rod,

            @About("The side to which the string bends round a post.") @OneOf({"left", "right"}) @Nullable
            String turns,

            @About("Whole turns round a post beside what the drawing shows, which is at most three quarters of one;"
                    + " 0 when left out.")
            @Quantity(least = 0, most = 20, usualTo = 3, why = "friction grows with every turn, soon nothing slips")
            @Nullable
            Integer wholeTurns,

            @About("Outside diameter of a printed eyelet pressed into the part; a plain hole when left out.")
            @Quantity(
                    unit = "mm",
                    least = 2,
                    most = 30,
                    usualTo = 15,
                    why = "its wall is two printed lines, its part a figure's")
            @Nullable
            Double eyelet) {}

    @Override
    public void check(String path, Around around) {
        for (int i = 0; i < over.size(); i++) {
            GuideEntry guide = over.get(i);
            String at = path + ".over." + i;
            if (guide.eyelet() != null && guide.rod() != null) {
                around.problem(at + ".eyelet", "expected an eyelet or a post's rod, read both");
            }
            if (guide.rod() != null && guide.turns() == null) {
                around.problem(at, "a post needs turns: left or right, the side to which the string bends round it");
            }
            if (guide.rod() == null && guide.wholeTurns() != null && guide.wholeTurns() > 0) {
                around.problem(
                        at + ".whole-turns",
                        "expected a post to wind the string round, read whole turns at an eyelet; give the post's rod, or"
                                + " leave whole-turns out");
            }
        }
    }
}
