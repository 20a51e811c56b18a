package jackwork.app.pay;

import jackwork.app.core.Job;

/** Findings run again for quicker ways of making. */
final class AgainJob extends Job {

    private final Pricing pricing;
    private int begun;

    AgainJob(String design, String version, Pricing pricing) {
        super(design, version, pricing.edits() + 1);
        this.pricing = pricing;
    }

    @Override
    protected void work() throws InterruptedException {
        pricing.again(line -> {
            reached(begun++);
            say(line);
        });
        reached(begun);
    }
}
