package jackwork.app.pay;

import jackwork.app.core.Job;

/** Virtual builds, put together here and by beginners, in place of the guessed share of good pieces. */
final class DrawJob extends Job {

    private final Pricing pricing;
    private final Pricing.Draw draw;

    DrawJob(String design, String version, Pricing pricing, int builds, long seed) {
        super(design, version, 2 * builds);
        this.pricing = pricing;
        this.draw = new Pricing.Draw(builds, seed, THREADS);
    }

    @Override
    protected void work() throws InterruptedException {
        pricing.draw(draw, this::made);
    }
}
