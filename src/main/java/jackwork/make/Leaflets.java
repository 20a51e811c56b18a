package jackwork.make;

import jackwork.check.Subject;
import jackwork.design.CaseEntry;
import jackwork.design.Design;
import jackwork.design.SpringEntry;
import jackwork.design.StringEntry;
import jackwork.design.TorqueEntry;
import jackwork.design.WorkshopFile;
import jackwork.drawing.BookletWriter;
import jackwork.drawing.BookletWriter.Section;
import jackwork.drawing.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What goes with a piece: the buyer's card, the service sheet, and what the shop needs to send and to show it. */
final class Leaflets {

    private static final String BLANK = "______________________";

    private Leaflets() {}

    static byte[] forTheBuyer(Design design, Subject subject, Paper paper) {
        String coins = CoinWords.of(subject.coins());
        List<Section> sections = List.of(
                new Section(
                        "How it goes",
                        "",
                        List.of(
                                "Stand it level. Drop one coin in at the top: " + coins
                                        + ". When you have heard it land, press the lever once, gently, down to its end, and let go.",
                                "The lever stands fast until a coin frees it. Do not force it: without a coin it is not"
                                        + " broken, it is waiting."),
                        null),
                new Section(
                        "Emptying",
                        "",
                        List.of(
                                emptying(design.box().housing()),
                                "Empty it before the heap reaches the " + tips(subject) + " inside"
                                        + (design.box().coinWorks().cashRoom() == null
                                                ? "."
                                                : "; it stops by itself when it is full.")),
                        null),
                new Section(
                        "If it jams",
                        "",
                        List.of(
                                "- Let the lever up, wait, tip the box a little to the left and to the right: most coins"
                                        + " fall then.",
                                "- Never poke into the slot, never oil it, never press harder.",
                                "- Folded notes, tokens and foreign coins do not belong in it.",
                                "- If it still stands, write to the maker."),
                        null),
                new Section(
                        "Care",
                        "",
                        List.of(
                                "Dust it with a dry brush. Keep it from damp, from heaters and from the sun behind glass:"
                                        + " thin wood bends."),
                        null),
                new Section("", "", List.of(Cautions.FOR_THE_PIECE, maker(design.workshop())), null));
        return BookletWriter.write(paper, design.name(), Cautions.FOR_THE_PIECE, sections);
    }

    /** By what the case really has. */
    private static String emptying(@Nullable CaseEntry housing) {
        if (housing == null) {
            return "How the coins come out: " + BLANK + BLANK;
        }
        if (housing.door() != null) {
            return "Turn the button behind, take the door out by its hole, tip the coins into your hand. Put the door back and"
                    + " turn the button across it.";
        }
        return housing.screwed()
                ? "It has no door: undo the screws around the far wall, take the wall off, tip the coins into your hand, and"
                        + " screw it on again."
                : "It has no door. Do not break it open: ask the maker how the coins come out.";
    }

    private static boolean hasDoor(Design design) {
        CaseEntry housing = design.box().housing();
        return housing != null && housing.door() != null;
    }

    private static String maker(WorkshopFile workshop) {
        return "Maker: " + Objects.requireNonNullElse(workshop.maker(), BLANK)
                + "    Contact: " + Objects.requireNonNullElse(workshop.contact(), BLANK)
                + "    Serial: ____________";
    }

    /** What a coin moves inside, in the maker's word. */
    private static String tips(Subject subject) {
        return subject.assembly().coinWorks().bucketWord();
    }

    private static boolean hasStrings(Design design) {
        return Stream.of(design.box().works(), design.figure().works())
                .anyMatch(works -> !works.joints(StringEntry.class).isEmpty());
    }

    static byte[] service(
            Design design, Subject subject, @Nullable Case housing, List<Dowels.Dowel> dowels, Paper paper) {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section(
                "Taking the works out",
                "",
                housing == null
                        ? List.of("This design has no case of ours: the works stand open.")
                        : List.of(
                                "- Empty it. Undo the four screws of the lid, lift the lid over the figure.",
                                String.format(
                                        Locale.ROOT,
                                        "- Undo the %d long screws of the near wall, holding the nuts behind. Pull the lever"
                                                + " inward, lift the works out; mind the spacers.",
                                        housing.spacers().size()),
                                "- Before it goes back: a press without a coin must be refused, and every coin must free"
                                        + " it ten times over."),
                null));
        List<String> worn = new ArrayList<>();
        worn.add("Look first at what rubs, in this order: the catch's two edges, the " + tips(subject)
                + "'s pivot, the lever's pivot"
                + (hasStrings(design) ? ", the strings at their posts." : "."));
        for (Dowels.Dowel dowel : dowels) {
            worn.add(
                    "- " + dowel.name() + ": " + dowel.rod() + String.format(Locale.ROOT, ", %.1f mm", dowel.length()));
        }
        sections.add(new Section("What wears, and the rods to replace it", "", worn, null));
        sections.add(new Section(
                "Write down",
                "",
                List.of(
                        "Serial ____________   Date ____________   Coins through it ____________",
                        "What failed, with which coin: ________________________________________________",
                        "What was done: ________________________________________________________________",
                        "Spare parts are made of the piece's own revision: keep its files with its serial."),
                null));
        return BookletWriter.write(
                paper, design.name() + ": service", "Local codes and licensed practice come first.", sections);
    }

    /** Parcel, photographs, and a first text for wherever it is offered. */
    static byte[] selling(Design design, Subject subject, Parcel parcel, Paper paper) {
        String coins = CoinWords.of(subject.coins());
        List<Section> sections = List.of(
                new Section(
                        "Parcel",
                        "",
                        List.of(
                                String.format(
                                        Locale.ROOT,
                                        "The piece: %.0f × %.0f × %.0f mm (wide, deep, high, whatever way it stands), about"
                                                + " %.0f g without coins.",
                                        parcel.width(),
                                        parcel.depth(),
                                        parcel.height(),
                                        parcel.mass()),
                                String.format(
                                        Locale.ROOT,
                                        "Carton with %.0f mm of padding all round: at least %.0f × %.0f × %.0f mm inside;"
                                                + " about %.0f g to post (carton and padding a guess).",
                                        Parcel.PADDING,
                                        parcel.width() + 2 * Parcel.PADDING,
                                        parcel.depth() + 2 * Parcel.PADDING,
                                        parcel.height() + 2 * Parcel.PADDING,
                                        parcel.posted()),
                                "Put the transit lock beneath the lever and tape it; no coins inside; the buyer's card on"
                                        + " top."),
                        null),
                new Section(
                        "Photographs",
                        "",
                        List.of(
                                "- whole, from the front, at rest, against plain paper",
                                "- the moment of its gesture, lever down",
                                "- a coin at the slot, a hand for size",
                                "- the works through the open case",
                                hasDoor(design)
                                        ? "- the door open, coins in a heap"
                                        : "- the coins that it has taken, in a heap",
                                "- one detail that shows the hand: paint, cloth, grain",
                                "- ten seconds of film: coin, press, gesture, coin falling"),
                        null),
                new Section(
                        "A first text",
                        "write it in your own words",
                        List.of(
                                "\"" + design.name() + "\", a money box of thin plywood, about "
                                        + String.format(
                                                Locale.ROOT,
                                                "%.0f × %.0f × %.0f cm",
                                                Math.ceil(parcel.width() / 10),
                                                Math.ceil(parcel.depth() / 10),
                                                Math.ceil(parcel.height() / 10))
                                        + ". Drop in a coin (" + coins
                                        + "), press the lever, and it comes to life"
                                        + (byWeight(design) ? "; its own weight brings it back" : "")
                                        + ". No battery. Made in small numbers.",
                                "Each was tried with every coin it takes before it left the bench.",
                                Cautions.FOR_THE_PIECE),
                        null));
        return BookletWriter.write(
                paper,
                design.name() + ": to send and to show",
                "The words \"not a toy\" do not decide the law; play value does.",
                sections);
    }

    /** Whether nothing but weight brings it back. */
    private static boolean byWeight(Design design) {
        return Stream.of(design.box().works(), design.figure().works())
                .allMatch(works -> works.joints(SpringEntry.class).isEmpty()
                        && works.joints(TorqueEntry.class).isEmpty());
    }
}
