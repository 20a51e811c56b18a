import { html, type TemplateResult } from "lit";
import type { PayView } from "../core/api.js";
import { standing } from "./wish.js";
import { number } from "./words.js";
import { PayWork } from "./work.js";

const FEW = 200;
const MANY = 1000;
const SEED = 1;

/** The share of pieces that pass at once: a guess until sample pieces, virtual builds, are made. */
class PayDraw extends PayWork {
  protected override render(): TemplateResult {
    const { pay } = this;
    if (!pay) return html``;
    return html`<h3>Share of good pieces</h3>
      <p class="good-share">${share(pay)}</p>
      <p class="buttons">
        ${this.work.running
          ? html`<button type="button" class="stop" @click=${() => void this.work.stop()}>Stop</button>`
          : [FEW, MANY].map(
              (builds) => html`<button type="button" class="draw" @click=${() => this.begin("pay-draw", pay, { builds, seed: SEED })}>Make ${builds}</button>`,
            )}
      </p>
      ${this.progress()} ${this.work.problem ? html`<p class="problem">${this.work.problem}</p>` : ""}`;
  }

  private progress(): TemplateResult {
    const { job } = this.work;
    if (!job || job.state === "done") return html``;
    const words = { running: "tried", done: "", stopped: "tried, then stopped; nothing was changed", failed: "tried, then it failed" };
    return html`<p class="progress" role="status">
      <progress max=${job.size} value=${job.done} aria-label="Sample pieces"></progress>
      <span>${job.done} of ${job.size} ${words[job.state]}</span>
    </p>`;
  }
}

function share(pay: PayView): string {
  const now = number(standing(pay, "yields.first-time"));
  if (!pay.drawn) {
    return `That ${now} of 100 pass their trial at once is a guess. Sample pieces tell better, put together by you and by a beginner.`;
  }
  const { builds, passes, beginners, words } = pay.drawn;
  return `${passes} of ${builds} sample pieces pass with every coin; put together by beginners ${number(100 * beginners)} of 100. ${words}.`;
}

customElements.define("jackwork-pay-draw", PayDraw);
