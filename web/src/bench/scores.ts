import { html, type TemplateResult } from "lit";
import type { CoinScore, Frozen } from "../core/api.js";
import { BenchPart } from "./part.js";
import { pictureKey, successPicture, twoBars } from "./picture.js";
import { many } from "../core/words.js";
import { between, day, percent, scoreWords } from "./words.js";
import { Following } from "../core/jobs.js";

const BUILDS = 1000;
const SEED = 1;

/** How tries of a revision went, beside what its sample pieces, virtual builds, say, and what is still to be tried. */
class BenchScores extends BenchPart {
  static override properties = { ...BenchPart.properties, revision: { attribute: false }, titled: { attribute: false } };

  revision!: Frozen;
  titled = false;
  private readonly work = new Following(this);
  private running = false;

  protected override updated(): void {
    const { job } = this.work;
    if (this.running && job && job.state !== "running") {
      this.running = false;
      if (job.state === "done") void this.bench.fetch();
    }
  }

  protected override render(): TemplateResult {
    const { revision } = this;
    const all = revision.all;
    return html`<section class="scores" data-revision=${revision.number}>
      <h2>${this.titled ? `${revision.title}, ` : ""}${this.titled ? "revision" : "Revision"} ${revision.number}</h2>
      <p class="all-coins">
        ${all.rate === null
          ? "Not tried yet."
          : html`With all coins: <strong>${all.passes} of ${all.tries}</strong> passed, ${percent(all.rate, 1)}; the true share
              lies <span class="interval" data-low=${all.interval95.low} data-high=${all.interval95.high}
                >${between(all.interval95)}</span
              >, as such a range does 95 times in 100.`}
      </p>
      ${this.needed(revision)} ${revision.scores.map((score) => this.coin(score))}
      ${revision.scores.length > 0
        ? pictureKey("tried", "predicted", "whisker", "wanted")
        : ""}
      ${this.causes(revision)} ${this.predict(revision)}
    </section>`;
  }

  private needed(revision: Frozen): TemplateResult {
    const { wish } = this.bench;
    const { cleanCoinsNeeded } = revision.all;
    return html`<div class="wish">
      <p class="needed" data-needed=${cleanCoinsNeeded}>
        ${cleanCoinsNeeded === 0
          ? html`That ${percent(wish.rate, 1)} work is shown, with ${percent(wish.confidence, 1)} confidence.`
          : html`<strong>${many(cleanCoinsNeeded, "more coin")}</strong> must pass without one failing to show that
              ${percent(wish.rate, 1)} work, with ${percent(wish.confidence, 1)} confidence.`}
      </p>
      <details>
        <summary>Another proof</summary>
        <div class="bench-form">
          <label>Share that works, % <input class="wish-rate" inputmode="decimal" .value=${String(100 * wish.rate)} @change=${this.wish} /></label>
          <label
            >Confidence, %
            <input class="wish-confidence" inputmode="decimal" .value=${String(100 * wish.confidence)} @change=${this.wish}
          /></label>
        </div>
        <p class="small">
          Settle it before you begin: who looks again after every coin and stops when it suits fools himself a little. It holds for
          tries like these; tries of one piece say how good that piece is, not the next one.
        </p>
      </details>
    </div>`;
  }

  private readonly wish = (): void => {
    const share = (selector: string): number => Number(this.text(selector).replace(",", ".")) / 100;
    const [rate, confidence] = [share(".wish-rate"), share(".wish-confidence")];
    const fits = (n: number): boolean => n >= 0.5 && n <= 0.9999;
    if (fits(rate) && fits(confidence)) void this.bench.wishFor({ rate, confidence });
    else this.requestUpdate();
  };

  private coin(score: CoinScore): TemplateResult {
    const { measured, predicted, builds } = score;
    return html`<div class="coin-score" data-coin=${score.coin}>
      <h3>${score.coin}</h3>
      ${successPicture(score, this.bench.wish.rate)}
      <p class="interval" data-low=${measured.interval95.low} data-high=${measured.interval95.high}>
        ${measured.rate === null ? "Not tried yet" : `Tried: ${scoreWords(measured)}`}.
        ${predicted === null ? "" : `Predicted: ${predicted} of ${builds} sample pieces, ${percent(predicted / builds, 1)}.`}
      </p>
      ${score.gapWords ? html`<p class="gap">${score.gapWords}</p>` : ""}
    </div>`;
  }

  private causes(revision: Frozen): TemplateResult {
    const tried = revision.all.failures;
    const built = revision.prediction?.causes ?? [];
    const names = [...new Set([...tried, ...built].map(({ cause }) => cause))];
    if (names.length === 0) return html``;
    const builds = revision.prediction?.builds ?? 1;
    const share = (cause: string): number => (tried.find((t) => t.cause === cause)?.tries ?? 0) / Math.max(1, revision.all.tries);
    const predicted = (cause: string): number => (built.find((b) => b.cause === cause)?.tries ?? 0) / builds;
    const most = Math.max(...names.map((cause) => Math.max(share(cause), predicted(cause))));
    return html`<h3>Why tries fail</h3>
      <ul class="cause-bars">
        ${names.map((cause) => {
          const words = [...tried, ...built].find((each) => each.cause === cause)?.words;
          const count = tried.find((t) => t.cause === cause)?.tries ?? 0;
          return html`<li data-cause=${cause} data-tries=${count}>
            <span>${words}</span>
            ${twoBars(share(cause), revision.prediction ? predicted(cause) : null, most)}
            <span class="small"
              >${many(count, "try", "tries")}${revision.prediction
                ? `, ${many(built.find((b) => b.cause === cause)?.tries ?? 0, "sample piece")} of ${builds}`
                : ""}</span
            >
          </li>`;
        })}
      </ul>`;
  }

  private predict(revision: Frozen): TemplateResult {
    const { job, problem } = this.work;
    const { prediction } = revision;
    return html`<div class="predicting">
      <p>
        ${prediction
          ? `Predicted on ${day(prediction.at)}: ${prediction.passes} of ${prediction.builds} sample pieces work with every coin, under ` +
            `${prediction.numbersDrawn} spreads, of which ${prediction.guesses} are guesses.`
          : "Not predicted yet: make this revision on paper, and lay that beside the tries."}
      </p>
      ${this.work.running && job
        ? html`<p class="progress">
            <progress max=${job.size} value=${job.done} aria-label="Sample pieces made"></progress>
            <span>${job.done} of ${job.size} made</span>
            <button type="button" class="stop" @click=${() => void this.work.stop()}>Stop</button>
          </p>`
        : html`<p class="buttons">
            <button type="button" class="predict" @click=${() => this.begin(revision)}>
              ${prediction ? "Predict it again" : "Predict it"}: ${BUILDS} sample pieces
            </button>
            ${job?.state === "stopped" ? html`<span class="small">Stopped; nothing was kept.</span>` : ""}
          </p>`}
      ${problem ? html`<pre class="problem" role="alert">${problem}</pre>` : ""}
    </div>`;
  }

  private begin(revision: Frozen): void {
    this.running = true;
    void this.work.begin("/api/bench/predict", {
      design: revision.design,
      revision: revision.number,
      builds: BUILDS,
      seed: SEED,
    });
  }
}

customElements.define("bench-scores", BenchScores);
