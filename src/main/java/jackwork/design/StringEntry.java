package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * @param cord a cord of the workshop
 * @param from where it is tied
 * @param over what it runs over, in order
 * @param to where its other end is tied
 * @param slack how much longer it is than its path as drawn, mm; 0 when absent
 */
@About("A string from part to part: it pulls only.")
public record StringEntry(
        String cord,
        PointOf from,
        List<GuideEntry> over,
        PointOf to,
        @Unit("mm") @Nullable Double slack) {

    /**
     * @param part that carries the post or eyelet
     * @param at its centre
     * @param rod a rod of the workshop for a round post; an eyelet when absent
     * @param turns left when the string bends to its left round a post, right when to its right; needed for a post
     * @param eyelet outside diameter of a printed eyelet pressed into the part; a plain hole when absent
     */
    @About("A post or an eyelet that a string runs over.")
    public record GuideEntry(
            String part,
            Place at,
            @Nullable String rod,
            @Nullable String turns,
            @Unit("mm") @Nullable Double eyelet) {}
}
