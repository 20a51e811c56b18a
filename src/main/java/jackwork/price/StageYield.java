package jackwork.price;

import java.util.Arrays;
import java.util.List;

/**
 * @param good share of what enters the stage that leaves it good
 * @param into how many enter it for one good piece at the end
 */
public record StageYield(Stage stage, double good, double into) {

    static List<StageYield> of(Yields yields) {
        return Arrays.stream(Stage.values())
                .map(stage -> new StageYield(stage, yields.of(stage), yields.into(stage)))
                .toList();
    }
}
