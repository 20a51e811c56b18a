package jackwork.app.make;

import jackwork.app.core.DesignCheck;
import jackwork.app.core.SceneMaker;
import jackwork.app.wire.Pair;
import jackwork.app.wire.Report;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.design.Named;
import jackwork.design.WorkshopFile;
import jackwork.drawing.CutSheet;
import jackwork.drawing.Paper;
import jackwork.drawing.PdfPictures;
import jackwork.drawing.Pens;
import jackwork.drawing.SvgWriter;
import jackwork.make.Dowels;
import jackwork.make.GlueUp;
import jackwork.make.Makings;
import jackwork.make.Needs;
import jackwork.make.PaperFile;
import jackwork.make.PlannedSheet;
import jackwork.make.PrintedPiece;
import jackwork.make.TestQuestion;
import jackwork.parts.Body;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import jackwork.stock.Uncertain;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Makes what *Can I make it?* shows. */
final class MakeViewMaker {

    private MakeViewMaker() {}

    /** @param check of the design as saved: what fails there is told here as well, before wood is cut for it */
    static MakeView of(
            String id,
            String version,
            Makings makings,
            DesignCheck check,
            Paper paper,
            List<MakeView.StockInHand> stocks) {
        List<Finding> findings = new ArrayList<>(makings.findings());
        Set<Topic> asked = findings.stream().map(Finding::topic).collect(Collectors.toSet());
        check.findings().stream()
                .filter(finding -> finding.status() == Status.FAIL && !asked.contains(finding.topic()))
                .forEach(findings::add);
        findings.sort(Comparator.comparing(Finding::status).reversed());
        Layers layers = Layers.of(makings.assembly().parts());
        List<GlueUp.Step> steps = makings.steps();
        return new MakeView(
                id,
                version,
                makings.design().name(),
                paper.name(),
                Paper.ALL.stream().map(Paper::name).toList(),
                Making.MOST_PIECES,
                Report.Verdict.valueOf(DesignCheck.verdict(findings).toUpperCase(Locale.ROOT)),
                findings.stream().map(Report.Finding::of).toList(),
                stocks,
                printed(makings),
                layers.total(),
                layers(makings, layers),
                stack(makings),
                makings.dowels().stream()
                        .map(rod -> rod(rod, makings.workshop()))
                        .toList(),
                steps.stream()
                        .map(step -> new MakeView.GlueStep(
                                step.heading(), step.words(), step.minutes(), step.picture() != null))
                        .toList(),
                steps.stream().mapToDouble(GlueUp.Step::minutes).sum());
    }

    /** @param own the workshop as its file has it */
    static List<MakeView.StockInHand> stocks(List<String> used, WorkshopFile own, Map<String, Double> measured) {
        List<MakeView.StockInHand> stocks = new ArrayList<>();
        for (String stock : used) {
            Uncertain thickness = Named.in(own.sheets(), stock).thickness();
            stocks.add(new MakeView.StockInHand(
                    stock,
                    thickness.value(),
                    thickness.low(),
                    thickness.high(),
                    thickness.basis().words(),
                    thickness.source(),
                    measured.get(stock)));
        }
        return stocks;
    }

    private static List<MakeView.PrintedKind> printed(Makings makings) {
        double density = makings.workshop().printerOrGuess().density().value();
        List<MakeView.PrintedKind> kinds = new ArrayList<>();
        for (PrintedPiece piece : makings.printed()) {
            double[] size = piece.size();
            kinds.add(new MakeView.PrintedKind(
                    piece.name(), piece.each(), piece.what(), size[0], size[1], size[2], piece.grams(density)));
        }
        return kinds;
    }

    private static List<MakeView.LayerPlace> layers(Makings makings, Layers layers) {
        TreeSet<Integer> numbers = new TreeSet<>();
        makings.assembly().parts().forEach(part -> numbers.add(part.layer()));
        return numbers.stream()
                .map(layer -> new MakeView.LayerPlace(layer, layers.back(layer), layers.front(layer)))
                .toList();
    }

    private static List<MakeView.StackPart> stack(Makings makings) {
        List<MakeView.StackPart> stack = new ArrayList<>();
        for (Body body : makings.assembly().bodies()) {
            for (Part part : body.parts()) {
                stack.add(new MakeView.StackPart(body.name(), part.thickness().value(), SceneMaker.part(part)));
            }
        }
        stack.sort(Comparator.comparingInt(one -> one.part().layer()));
        return stack;
    }

    private static MakeView.RodThrough rod(Dowels.Dowel rod, WorkshopFile workshop) {
        return new MakeView.RodThrough(
                rod.name(),
                rod.rod(),
                rod.from(),
                rod.to(),
                rod.length(),
                Pair.of(rod.at()),
                Named.in(workshop.rods(), rod.rod()).diameter().value());
    }

    static MakeSheets sheets(String version, int quantity, Optional<Making.Laid> laid) {
        if (laid.isEmpty()) {
            return new MakeSheets(version, quantity, false, 0, List.of(), List.of());
        }
        var pack = laid.get().pack();
        Pens pens = pack.makings().workshop().laser().pensOrStandard();
        return new MakeSheets(
                version,
                quantity,
                true,
                laid.get().seconds(),
                pack.sheets().stream().map(sheet -> sheet(sheet, pens)).toList(),
                pack.shopping().stream().map(MakeViewMaker::needed).toList());
    }

    private static MakeSheets.SheetLaid sheet(PlannedSheet sheet, Pens pens) {
        return new MakeSheets.SheetLaid(
                sheet.name(),
                sheet.stock(),
                sheet.number(),
                sheet.sheet().width(),
                sheet.sheet().height(),
                sheet.offcutWidth(),
                sheet.offcutHeight(),
                sheet.engrave(),
                sheet.cut(),
                sheet.seconds() / 60,
                sheet.share(),
                svg(sheet.sheet(), pens));
    }

    private static String svg(CutSheet sheet, Pens pens) {
        return new String(SvgWriter.write(sheet, pens), StandardCharsets.UTF_8);
    }

    private static MakeSheets.Needed needed(Needs.Shopping line) {
        Needs.Need need = line.need();
        return new MakeSheets.Needed(need.item(), need.amount(), need.unit(), need.what(), line.toBuy());
    }

    static MakePapers papers(Makings makings, Function<PaperFile, Optional<byte[]>> pdfs) {
        List<MakePapers.PaperPages> papers = new ArrayList<>();
        for (PaperFile kind : PaperFile.values()) {
            pdfs.apply(kind)
                    .ifPresent(pdf -> papers.add(new MakePapers.PaperPages(
                            kind,
                            kind.file(),
                            kind.what(),
                            PdfPictures.sizes(pdf).stream()
                                    .map(size -> new MakePapers.PaperPage(size.width(), size.height()))
                                    .toList())));
        }
        Pens pens = makings.workshop().laser().pensOrStandard();
        return new MakePapers(
                papers,
                makings.testPieces().stream()
                        .map(piece -> new MakePapers.TestSheet(
                                piece.title(), piece.width(), piece.height(), svg(piece, pens)))
                        .toList(),
                Arrays.stream(TestQuestion.values())
                        .map(question ->
                                new MakePapers.TestMeasure(question.heading(), question.how(), question.becomes()))
                        .toList());
    }

    static MakeSolids solids(Makings makings) {
        List<MakeSolids.Surface> surfaces = new ArrayList<>();
        for (PrintedPiece piece : makings.printed()) {
            surfaces.add(new MakeSolids.Surface(
                    piece.name(),
                    Arrays.stream(piece.mesh().vertices()).boxed().toList(),
                    Arrays.stream(piece.mesh().triangles()).boxed().toList()));
        }
        return new MakeSolids(surfaces);
    }
}
