package jackwork.design;

import java.util.List;

/** Numbers of a workshop that are each sensible and do not go together. */
final class WorkshopAcross {

    private WorkshopAcross() {}

    static void check(WorkshopFile workshop, YamlFile file) {
        double comfortable = workshop.finger().comfortable().value();
        double strongest = workshop.finger().strongest().value();
        if (strongest < comfortable) {
            file.problem(
                    "finger.strongest",
                    "read " + strongest + " N, less than the " + comfortable
                            + " N of finger.comfortable; expected the hardest press to be the harder one");
        }
        List<Double> bed = workshop.laser().bed();
        if (bed.size() == 2) {
            double side = Math.min(bed.get(0), bed.get(1));
            double margin = workshop.laser().margin();
            double gap = workshop.laser().gap();
            double kerf = workshop.laser().kerf().high();
            if (2 * margin >= side) {
                file.problem(
                        "laser.margin",
                        "read " + margin + " mm on either side of a bed of " + side + " mm; nothing is left to cut");
            }
            if (gap >= side) {
                file.problem(
                        "laser.gap",
                        "read " + gap + " mm between parts on a bed of " + side + " mm; no second part finds room");
            }
            if (gap < kerf) {
                file.problem(
                        "laser.gap",
                        "read " + gap + " mm between parts, less than the width of the cut, " + kerf
                                + " mm; expected more, or one part's cut runs into the next");
            }
        }
    }
}
