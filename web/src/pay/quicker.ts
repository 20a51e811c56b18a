import { html, type TemplateResult } from "lit";
import type { Offer, PayView } from "../core/api.js";
import type { Desk } from "../core/desk.js";
import { set } from "../core/merge.js";
import { bar } from "./bars.js";
import { money, number, size } from "./words.js";
import { PayWork } from "./work.js";

/** Quicker ways of making; findings run again where they are edits of the design. */
class PayQuicker extends PayWork {
  static override properties = { ...PayWork.properties, desk: { attribute: false } };

  desk: Desk | null = null;

  protected override render(): TemplateResult {
    const { pay } = this;
    if (!pay) return html``;
    const offers = pay.report.quicker;
    const most = Math.max(...offers.map(({ minutesSaved }) => Math.abs(minutesSaved)), 1);
    return html`<h3>Make it quicker</h3>
      <p class="small">
        Those that change the design are counted roughly, before and after alike: each piece from separate sheets.
      </p>
      <ul class="offers">
        ${offers.map((offer) => this.offer(offer, most, pay))}
      </ul>
      ${pay.edits === 0 ? "" : this.asking(pay)}`;
  }

  private offer(offer: Offer, most: number, pay: PayView): TemplateResult {
    const { currency } = pay.report;
    const saves = offer.minutesSaved >= 0;
    return html`<li data-offer=${offer.id}>
      <p class="offer-name"><strong>${offer.name}</strong></p>
      ${bar([{ from: 0, to: Math.abs(offer.minutesSaved) / most, filling: saves ? "wood" : "hatched" }])}
      <p class="offer-saves">
        ${saves ? "Saves" : "Costs"} ${number(Math.abs(offer.minutesSaved), 1)} minutes and
        ${saves === size(offer.saved) >= 0 ? "" : saves ? "costs " : "saves "}${money(offer.saved.replace("-", ""))} ${currency} a piece; takes
        ${money(offer.capital)} ${currency} to begin
        with${offer.paysBack == null ? ", never paid back" : `, paid back by ${offer.paysBack} pieces`}.
      </p>
      <p class="small findings-say">${offer.words} <em>${findings(offer)}</em></p>
      ${this.taking(offer)}
    </li>`;
  }

  /** Only what was asked about and does not fail; it can be taken back as any change can. */
  private taking(offer: Offer): TemplateResult | "" {
    const steps = Object.entries(offer.edit).map(([path, value]) => set(path, value));
    if (steps.length === 0 || offer.after == null || offer.after === "fails") return "";
    return html`<p class="buttons">
      <button type="button" class="plain take-way" @click=${() => void this.desk?.edit(offer.name, steps)}>
        Change the design so
      </button>
    </p>`;
  }

  private asking(pay: PayView): TemplateResult {
    const { job } = this.work;
    const words = job?.state === "stopped" ? "Stopped; nothing was changed." : (job?.lines.at(-1) ?? "");
    return html`<p class="buttons">
        ${this.work.running
          ? html`<button type="button" class="stop" @click=${() => void this.work.stop()}>Stop</button>`
          : html`<button type="button" class="ask-again" @click=${() => this.begin("pay-again", pay)}>Ask every question again</button>`}
      </p>
      ${job && job.state !== "done"
        ? html`<p class="progress" role="status">
            <progress max=${job.size} value=${job.done} aria-label="Questions asked again"></progress> <span>${words}</span>
          </p>`
        : ""}
      ${this.work.problem ? html`<p class="problem">${this.work.problem}</p>` : ""}`;
  }
}

/** What the design's own questions say of it. */
function findings(offer: Offer): string {
  if (offer.after != null) {
    const verdict = { works: "Still nothing found against it", doubtful: "It works, but not for certain", fails: "It fails then" }[offer.after];
    return `${verdict ?? offer.after}. ${offer.worse.length === 0 ? "No question is answered worse." : `Worse: ${offer.worse.join(", ")}.`}`;
  }
  if (offer.findings === "stay") return "The piece stays as it is, and so do its findings.";
  return Object.keys(offer.edit).length === 0
    ? "It needs new drawings; ask every question of them again."
    : "Not asked yet what is found against it then.";
}

customElements.define("jackwork-pay-quicker", PayQuicker);
