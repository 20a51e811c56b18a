package jackwork.app.make;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import jackwork.make.PaperFile;
import java.util.List;

/** What comes out of the paper printer, and the test pieces that are cut before all others. */
record MakePapers(List<PaperPages> papers, List<TestSheet> tests, List<TestMeasure> measures) implements Payload {

    /** @param file its name in the pack */
    record PaperPages(PaperFile kind, String file, String what, List<PaperPage> pages) {}

    /** Its size, mm. */
    record PaperPage(@Places(1) double width, @Places(1) double height) {}

    /** @param svg the file of the pack */
    record TestSheet(
            String name, @Places(1) double width, @Places(1) double height, String svg) {}

    /** @param becomes which of the workshop's values */
    record TestMeasure(String heading, String how, String becomes) {}
}
