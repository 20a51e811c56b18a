package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("Limits how near and how far two points may be.")
public record LimitEntry(
        @About("A point of one part.") PointOf from,

        @About("A point of another.") PointOf to,

        @About("How near they may come; anything when left out.")
        @Quantity(unit = "mm", least = 0, most = 2000, usualTo = 500, why = "no distance is less than 0")
        @Nullable
        Double least,

        @About("How far apart they may be; anything when left out.")
        @Quantity(unit = "mm", least = 0, most = 2000, usualTo = 500, why = "no distance is less than 0")
        @Nullable
        Double most)
        implements JointEntry {

    @Override
    public void check(String path, Around around) {
        if (least == null && most == null) {
            around.problem(path, "expected least, most or both, mm");
        }
        if (least != null && most != null && least > most) {
            around.problem(path + ".least", "read " + least + ", expected no more than most, which is " + most);
        }
    }
}
