package jackwork.app.make;

import jackwork.app.core.Job;
import jackwork.app.core.JobView;
import jackwork.app.wire.Zip;
import jackwork.drawing.Paper;
import jackwork.make.SheetSearch;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/** Makes a pack, file by file, and lays it on the shelf. */
final class PackJob extends Job {

    private final Making making;
    private final PackShelf shelf;
    private final String id;
    private final ForMaking wanted;
    private final Paper paper;
    private int standing;
    private volatile JobView.@Nullable Packed packed;

    PackJob(Making making, PackShelf shelf, String id, String version, ForMaking wanted, Paper paper) {
        super(id, version, 0);
        this.making = making;
        this.shelf = shelf;
        this.id = id;
        this.wanted = wanted;
        this.paper = paper;
    }

    @Override
    protected void work() throws IOException {
        Thread worker = Thread.currentThread();
        SheetSearch search = new SheetSearch(0, worker::isInterrupted, words -> {});
        Making.Laid laid = making.laid(id, wanted, search);
        say(SheetsJob.words(laid));
        goOn();
        String name = id.replaceAll("^.*/", "");
        try (PackShelf.Bench bench = shelf.bench()) {
            List<Path> written = laid.pack().write(bench.folder(), paper, this::stands);
            SortedMap<String, Zip.Content> files = new TreeMap<>();
            written.forEach(file -> files.put(name + "/" + file.getFileName(), out -> Files.copy(file, out)));
            try (OutputStream out = Files.newOutputStream(bench.zip())) {
                Zip.write(files, out);
            }
            String file = name + "-pack.zip";
            bench.keep(number(), file);
            packed = new JobView.Packed(
                    file, written.size(), (int) Files.size(shelf.find(number()).zip()));
        }
    }

    private void stands(String file) {
        say(file);
        reached(++standing);
        goOn();
    }

    private static void goOn() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("stopped");
        }
    }

    @Override
    protected Optional<JobView.Packed> packed() {
        return Optional.ofNullable(packed);
    }
}
