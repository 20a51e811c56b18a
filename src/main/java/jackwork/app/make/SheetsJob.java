package jackwork.app.make;

import jackwork.app.core.Job;
import jackwork.make.SheetSearch;
import java.util.Locale;

/** Lays sheets out, or looks for tighter ones; stopped, it takes the best so far. */
final class SheetsJob extends Job {

    private final Making making;
    private final String id;
    private final ForSheets wanted;
    private final long began = System.nanoTime();
    private volatile boolean enough;

    SheetsJob(Making making, String id, String version, ForSheets wanted) {
        super(id, version, (int) wanted.seconds());
        this.making = making;
        this.id = id;
        this.wanted = wanted;
    }

    @Override
    protected void work() {
        SheetSearch search = new SheetSearch(wanted.seconds(), this::hasEnough, this::say);
        Making.Laid laid = wanted.seconds() > 0
                ? making.tightened(id, wanted.making(), search)
                : making.laid(id, wanted.making(), search);
        say(words(laid));
    }

    /** Asked all the while by the search. */
    private boolean hasEnough() {
        reached((int) ((System.nanoTime() - began) / 1_000_000_000));
        return enough;
    }

    /** What a layout comes to, in words. */
    static String words(Making.Laid laid) {
        int sheets = laid.pack().sheets().size();
        double seconds = laid.pack().sheets().stream()
                .mapToDouble(sheet -> sheet.seconds())
                .sum();
        return String.format(
                Locale.ROOT,
                "%d sheet%s, laid out in %.1f s; about %.0f min at the laser",
                sheets,
                sheets == 1 ? "" : "s",
                laid.seconds(),
                seconds / 60);
    }

    @Override
    public void stop() {
        enough = true;
    }

    @Override
    public void end() {
        enough = true;
        super.end();
    }
}
