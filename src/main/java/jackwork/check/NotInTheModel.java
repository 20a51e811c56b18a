package jackwork.check;

import java.util.List;

/**
 * What no question, cycle or build looks at, though a piece may fail by it: the one list of it, told beside every
 * verdict. What comes into the model goes from here; what is found to be missing comes in.
 *
 * @param what is left out, in a maker's words
 * @param instead what a maker can do about it
 */
public record NotInTheModel(String what, String instead) {

    /** Nearest to the coin first, then joints, wood and what visitors do. */
    private static final List<NotInTheModel> ALL = List.of(
            new NotInTheModel(
                    "How much a leaning coin drags on the walls of its gap is a finding, by formula. In the cycle and in"
                            + " builds it rolls clear of them.",
                    "Roll your thinnest coin through the gap, dry, before the front goes on."),
            new NotInTheModel(
                    "A coin is followed in the plane of its layer until it is below the bucket. How it tumbles from there, and whether"
                            + " it stays on edge, is not looked at; of the heap a finding knows how steep and how dense it may be.",
                    "Throw thirty coins into the first piece, and look where they lie."),
            new NotInTheModel(
                    "What layers rub on each other is a drag of each bearing, the same whatever it bears and wherever it stands. Pegs in slots,"
                            + " strings and teeth have none, and nothing leans harder on a table that leans.",
                    "Leave air or a washer between layers that move past each other, and try it dry."),
            new NotInTheModel(
                    "In builds lever and bucket lie to one side in the play of their holes and stay there. That they rattle"
                            + " and hang lower, and in the cycle all play of other pins, is left out.",
                    "Wiggle the lever while you press it, and see whether the catch still holds and frees."),
            new NotInTheModel(
                    "Builds draw where holes, weights, stops and the layers of lever and bucket come to be. Pegs, string ends, what runs on"
                            + " teeth, cams and pawls, and joints that repeat each other are where they are drawn; all is bored square.",
                    "Glue up on dowels or the jigs, and measure from pivot to pivot afterwards."),
            new NotInTheModel(
                    "Holes are round and rods straight: no taper of the cut, no bent rod. Of rods that are out of round only the bucket's is"
                            + " looked at, whether it binds.",
                    "Roll each rod on a flat table, and turn it once all the way round in its hole."),
            new NotInTheModel(
                    "Glue and paint in a hole are no more than its bearing's drag: that it sets, and holds fast, is left out. A film of paint takes"
                            + " room from slot, gap and the bucket's sides, and none from a bearing.",
                    "Keep finish out of holes, and turn every joint until the glue has set."),
            new NotInTheModel(
                    "Sheets that are not flat take room from the coin's gap and the bucket's sides, and from nothing else. All of a"
                            + " stock are of one thickness. Damp makes them thicker and heavier in builds; it makes no hole tighter.",
                    "Store sheets flat, and leave the first piece for a week where it will stand."),
            new NotInTheModel(
                    "Friction is one number for each two surfaces in each piece, dry or damp, new or worn; in builds it is higher at rest,"
                            + " however long that was. Wear widens the holes of pins; it takes nothing from tooth, strut, teeth or strings.",
                    "Press the first piece a thousand times, and log what changes."),
            new NotInTheModel(
                    "A weight given in grams is drawn within a twentieth, half a millimetre off at the most. That it works loose is left out.",
                    "Weigh each, write what it weighs into the design, and glue it in."),
            new NotInTheModel(
                    "What a weight, picture or piece of cloth bumps into as it moves is not looked at.",
                    "Move the figure slowly by hand, all the way, once weights and cloth are on."),
            new NotInTheModel(
                    "Nothing bends. A narrow neck is a finding, and so is the most loaded rod; a long thin arm that gives is not.",
                    "Press on the end of a long arm; where it gives, make it wider or of two layers."),
            new NotInTheModel(
                    "What the strongest press without a coin does to pivots, post, tooth, strut, arms and glue is a finding: at rest, in"
                            + " the plane of the layers, as if no file told the grain of a part: each is asked the weaker way of its sheet. Left out"
                            + " are the sideways tilt of lever and bucket on their rods, dowels that also hold layers together, what the figure"
                            + " takes of the press, and that wood tires.",
                    "Cut lever, tooth and strut so that the face grain runs along them; press the locked lever of the first piece as hard as"
                            + " a visitor would, then look at tooth, strut and rods."),
            new NotInTheModel(
                    "What a blow or a fall does to the wood is not asked, nor the blow of a lever that is struck down: the strongest press is asked"
                            + " at rest. Other rods than those of a refused press, and the one that ends the lever's way, are asked only what the"
                            + " figure's own forces do to them.",
                    "Strike the first piece's lever down with a coin in it, and look at what stops it."),
            new NotInTheModel(
                    "Strings give nothing under a pull, and never slip off sideways. Builds draw how long they are; cloth is asked how"
                            + " long it is and how it is cut: its weight, its stiffness and its drag are left out.",
                    "Take cord that does not give, pull it hard before you knot it, and pin the cloth on before you sew."),
            new NotInTheModel(
                    "Whether a hard press tips a piece that has a case, or pushes it away, is a finding, by forces at rest on a level table; builds know"
                            + " nothing of it. That it rocks on its feet, hops, or is pressed on a table that leans is not asked.",
                    "Press the finished box at its lever's end; put felt or rubber under it, or a weight into it."),
            new NotInTheModel(
                    "Fingers in gaps of the case that a press closes are a finding. Those between parts of the figure are not asked: nearly every"
                            + " figure has one, and a hard press goes into it.",
                    "Feel for them with the first piece, pressed slowly; round their edges, and tell whoever shows it to children."),
            new NotInTheModel(
                    "The finger presses where the design says, and straight: not from the side, not askew, not with two hands.",
                    "Let somebody press it who has never seen it, and a child."),
            new NotInTheModel(
                    "In which order it can be put together, and whether the works come out again, is not asked.",
                    "Put all of it together dry, and take it apart, before you glue."));

    public static List<NotInTheModel> all() {
        return ALL;
    }
}
