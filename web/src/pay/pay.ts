import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { designPath, type Finding, type PayView, post } from "../core/api.js";
import type { Desk } from "../core/desk.js";
import { type FindingActions, passes, troubles } from "../core/findings.js";
import { backwards } from "./back.js";
import { fillings } from "./bars.js";
import { cash, cost } from "./cost.js";
import "./draw.js";
import "./ladder.js";
import "./quicker.js";
import { restsOn } from "./rests.js";
import { sliders } from "./sliders.js";
import { swings } from "./swings.js";
import { ways } from "./ways.js";
import { isPlain, noWish, type Wish } from "./wish.js";
import type { Room } from "../core/room.js";
import { told } from "../core/units.js";

/** Will it pay? What is asked stands in sliders; everything else follows them. */
class PayRoom extends LitElement {
  static override properties = { desk: { attribute: false }, pay: { state: true }, problem: { state: true } };

  desk: Desk | null = null;
  private pay: PayView | null = null;
  /** The answer to nothing asked, of this state of the files. */
  private usual: PayView | null = null;
  private wish: Wish = noWish();
  private problem = "";
  /** Design and version that were asked for last. */
  private of = "";
  private asking = false;
  private wanted = false;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("desk")) this.desk?.watch(this);
    const view = this.desk?.view;
    if (!view) return;
    const of = `${view.id} ${view.version}`;
    if (of === this.of) return;
    if (!this.of.startsWith(`${view.id} `)) {
      this.wish = noWish();
      this.pay = null;
    }
    this.of = of;
    this.usual = null;
    void this.ask();
  }

  private readonly take = (wish: Wish): void => {
    this.wish = wish;
    this.requestUpdate();
    void this.ask();
  };

  private readonly again = (): void => {
    this.usual = null;
    void this.ask();
  };

  /** Asks as soon as the last answer is there; only the newest wish counts. */
  private async ask(): Promise<void> {
    this.wanted = true;
    if (this.asking) return;
    this.asking = true;
    while (this.wanted) {
      this.wanted = false;
      const began = performance.now();
      await this.answer();
      await this.updateComplete;
      performance.measure("pay", { start: began, end: performance.now() });
    }
    this.asking = false;
    this.requestUpdate();
  }

  private async answer(): Promise<void> {
    const view = this.desk?.view;
    if (!view) return;
    const { of, wish } = this;
    const path = designPath(view.id, "pay");
    try {
      this.usual ??= await post<PayView>(path, { ...noWish(), version: view.version });
      const pay = isPlain(wish) ? this.usual : await post<PayView>(path, { ...wish, version: view.version });
      if (of !== this.of) {
        this.usual = null;
        this.wanted = true;
        return;
      }
      this.pay = pay;
      this.problem = "";
    } catch (e) {
      this.problem = e instanceof Error ? e.message : String(e);
    }
  }

  protected override updated(): void {
    const { pay } = this;
    if (pay && !this.asking && !this.problem) this.setAttribute("data-answered", pay.version);
    else this.removeAttribute("data-answered");
  }

  protected override render(): TemplateResult {
    const { pay, usual, problem } = this;
    const complaint = problem ? html`<pre class="problem" role="alert">${problem}</pre>` : "";
    if (!pay) {
      return html`${complaint} ${problem ? "" : html`<p class="waiting" role="status">Laying the sheets out …</p>`}`;
    }
    const { report } = pay;
    const old = !problem && this.desk?.view != null && this.desk.view.version !== pay.version;
    const anew = old ? html`<p class="waiting" role="status">The design has changed; laying its sheets out anew …</p>` : "";
    return html`${fillings}
      <main class="pay" @asked=${(e: CustomEvent<string>) => this.take({ ...this.wish, shelf: e.detail })} @settled=${this.again}>
        <div class="pay-side">
          <section class="answer" aria-label="Answer">${anew} ${verdict(pay)} ${complaint}</section>
          ${sliders(pay, usual ?? pay, this.wish, this.take)}
        </div>
        <div class="pay-sheets">
          <section class="wide" aria-label="Price ladder">
            <jackwork-pay-ladder .report=${report}></jackwork-pay-ladder>
          </section>
          <section aria-label="Cost of a good piece">${cost(report)}</section>
          <section aria-label="Backwards from the price">${backwards(report)}</section>
          <section aria-label="Quicker ways of making">
            <jackwork-pay-quicker .desk=${this.desk} .pay=${pay} design=${this.desk?.chosen ?? ""}></jackwork-pay-quicker>
          </section>
          <section aria-label="Cash">${cash(report)}</section>
          <section class="wide" aria-label="Ways of selling">${ways(report)}</section>
          <section class="wide" aria-label="What moves the answer">${swings(report)}</section>
          <section aria-label="What it rests on">
            ${restsOn(report)}
            <jackwork-pay-draw .pay=${pay} design=${this.desk?.chosen ?? ""}></jackwork-pay-draw>
          </section>
          <section class="findings" aria-label="Findings">
            <h3>Findings</h3>
            <details>
              <summary>${counted(report.findings)}</summary>
              ${troubles(report, NO_ACTIONS)} ${passes(report, NO_ACTIONS)}
            </details>
          </section>
        </div>
      </main>`;
  }
}

const VERDICT: Record<string, [string, string]> = {
  pays: ["works", "It pays"],
  doubtful: ["doubtful", "It pays, but not for certain"],
  fails: ["fails", "It does not pay"],
};

/** In one sentence: whether, and why. */
function verdict({ report }: PayView): TemplateResult {
  const [kind, words] = VERDICT[report.verdict] ?? ["fails", report.verdict];
  const why = report.findings.find(({ topic }) => topic === "pay-cost")?.worded.why;
  return html`<h2 class="verdict ${kind}" role="status">
    ${words}: <span class="why">${why ? `${told(why)}.` : "no way of selling leaves anything of that price."}</span>
  </h2>`;
}

const counted = (findings: Finding[]): string =>
  (["fail", "doubtful", "pass"] as const)
    .map((status) => `${findings.filter((finding) => finding.status === status).length} ${status}`)
    .join(", ");

/** Findings about money have no place on the drawing and no single number that mends them. */
const NO_ACTIONS: FindingActions = {
  show: () => undefined,
  leave: () => undefined,
  go: () => undefined,
  look: () => undefined,
  apply: () => undefined,
  found: (_: Finding) => null,
  mendable: () => false,
};

customElements.define("jackwork-pay", PayRoom);

export const pay: Room | null = {
  id: "pay",
  title: "Will it pay?",
  ofDesign: true,
  show: (desk) => html`<jackwork-pay .desk=${desk}></jackwork-pay>`,
};
