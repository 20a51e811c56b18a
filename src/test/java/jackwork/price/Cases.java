package jackwork.price;

import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Workshops and batches as plain as can be, for sums that are worked by hand. */
final class Cases {

    private static final String WORKSHOP = """
            format: 2
            name: By hand
            currency: EUR
            laser: {bed: [600, 400], kerf: 0.1, margin: 5, gap: 3}
            sheets: {ply: {kind: birch-ply, thickness: 3, size: [500, 400]}}
            rods: {bamboo: {kind: bamboo, diameter: 3}}
            cords: {}
            fits: {running: 0.2, press: 0}
            friction: []
            finger: {comfortable: 6, strongest: 60}
            """;

    private Cases() {}

    /** @param pay lines of workshop.yaml */
    static WorkshopFile workshop(String pay) {
        try {
            Path folder = Files.createTempDirectory("jackwork-price");
            Files.writeString(folder.resolve("workshop.yaml"), WORKSHOP + pay);
            WorkshopFile workshop = WorkshopReader.read(folder);
            Files.delete(folder.resolve("workshop.yaml"));
            Files.delete(folder);
            return workshop;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Rates rates(String pay) {
        return Rates.of(workshop(pay));
    }

    /** Nothing but work. */
    static Batch work(int pieces, Map<String, Double> work) {
        return new Batch(pieces, List.of(), List.of(), 0, work, Map.of());
    }
}
