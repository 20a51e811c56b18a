import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { designPath, type PayView } from "./api.js";
import { Following } from "./jobs.js";
import { standing } from "./pay-wish.js";
import { number } from "./pay-words.js";

const FEW = 200;
const MANY = 1000;
const SEED = 1;

/** The share of pieces that pass at once: a guess until virtual builds are drawn. Tells of new ones as an event `settled`. */
class PayDraw extends LitElement {
  static override properties = { pay: { attribute: false }, design: {} };

  pay: PayView | null = null;
  design = "";
  private readonly work = new Following(this);
  private told = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("design") && changed.get("design") !== undefined) this.work.forget();
  }

  protected override updated(): void {
    const { job } = this.work;
    if (job?.state === "done" && job.number !== this.told) {
      this.told = job.number;
      this.dispatchEvent(new CustomEvent("settled", { bubbles: true }));
    }
  }

  protected override render(): TemplateResult {
    const { pay } = this;
    if (!pay) return html``;
    return html`<h3>Share of good pieces</h3>
      <p class="good-share">${share(pay)}</p>
      <p class="buttons">
        ${this.work.running
          ? html`<button type="button" class="stop" @click=${() => void this.work.stop()}>Stop</button>`
          : [FEW, MANY].map(
              (builds) => html`<button type="button" class="draw" @click=${() => this.begin(builds)}>Draw ${builds}</button>`,
            )}
      </p>
      ${this.progress()} ${this.work.problem ? html`<p class="problem">${this.work.problem}</p>` : ""}`;
  }

  private begin(builds: number): void {
    const { pay } = this;
    if (!pay) return;
    const request = { version: pay.version, laidOut: pay.laidOut, builds, seed: SEED };
    void this.work.begin(designPath(this.design, "pay-draw"), request);
  }

  private progress(): TemplateResult {
    const { job } = this.work;
    if (!job || job.state === "done") return html``;
    const words = { running: "tried", done: "", stopped: "tried, then stopped; nothing was changed", failed: "tried, then it failed" };
    return html`<p class="progress" role="status">
      <progress max=${job.size} value=${job.done} aria-label="Virtual builds"></progress>
      <span>${job.done} of ${job.size} ${words[job.state]}</span>
    </p>`;
  }
}

function share(pay: PayView): string {
  const now = number(standing(pay, "yields.first-time"));
  if (!pay.drawn) {
    return `That ${now} of 100 pass their trial at once is a guess. Virtual builds tell better, put together by you and by a beginner.`;
  }
  const { builds, passes, beginners, words } = pay.drawn;
  return `${passes} of ${builds} virtual builds pass with every coin; put together by beginners ${number(100 * beginners)} of 100. ${words}.`;
}

customElements.define("jackwork-pay-draw", PayDraw);
