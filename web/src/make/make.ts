import { html, LitElement, type TemplateResult } from "lit";
import type { Finding } from "../core/api.js";
import type { Desk } from "../core/desk.js";
import { type FindingActions, passes, troubles } from "../core/findings.js";
import { gluing, needed, rods } from "./lists.js";
import "./pack.js";
import "./papers.js";
import "./printed.js";
import "./sheets.js";
import "./stack.js";
import { hand } from "./hand.js";
import { Making } from "./making.js";
import type { Room } from "../core/room.js";

const VERDICT = {
  works: "Nothing was found against making it.",
  doubtful: "It can perhaps be made: something is doubtful.",
  fails: "It cannot be made so.",
};

/** What is shown, by the ids of its headings. */
const JUMPS = [
  ["Sheets", "sheets-title"],
  ["Printed parts", "printed-title"],
  ["Layers", "stack-title"],
  ["Paper", "papers-title"],
  ["Test pieces", "tests-title"],
  ["Glue-up", "gluing-title"],
  ["Rods", "rods-title"],
  ["What it takes", "needs-title"],
] as const;

/** Can I make it? All that one design needs to be made, and one button for it. */
class MakeRoom extends LitElement {
  static override properties = { desk: { attribute: false }, pointed: { state: true } };

  desk: Desk | null = null;
  private readonly making = new Making(this, () => this.desk?.view ?? null);
  /** Name of the part that a finding speaks of. */
  private pointed = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(): void {
    this.desk?.watch(this);
    this.making.follow();
  }

  protected override render(): TemplateResult {
    const { making } = this;
    const { view, source, sheets } = making;
    if (!view || !source) {
      return html`<main class="making">
        ${making.problem ? html`<pre class="problem" role="alert">${making.problem}</pre>` : html`<p class="waiting" role="status">Working it out …</p>`}
        ${making.problem && making.wanted.measuredAny ? this.forget() : ""}
      </main>`;
    }
    const verdict = making.problem ? "fails" : view.verdict;
    return html`<main class="making">
      <section class="making-head" aria-label="What is to be made" aria-busy=${making.waiting}>
        <h2 class="verdict ${verdict}" role="status">${VERDICT[verdict]}</h2>
        ${verdict === "fails"
          ? ""
          : html`<p class="not-computed">
              Not computed yet: whether it can be put together in some order, and whether the works come out of the case again. Try both
              dry, before you glue.
            </p>`}
        ${making.problem ? html`<pre class="problem" role="alert">${making.problem}</pre>` : ""}
        ${troubles(view, this.actions)} ${hand(making, view)}
        <p class="quiet working" role="status">${making.waiting ? "Working it out …" : ""}</p>
        <jackwork-pack .source=${making.current} .quantity=${making.wanted.quantity}></jackwork-pack>
        <details class="made-passed">
          <summary>What was asked of it</summary>
          ${passes(view, this.actions)}
        </details>
      </section>
      <div class="making-body">
        <p class="jumps">
          ${JUMPS.map(
            ([words, place]) => html`<button type="button" class="plain" @click=${() => this.jump(place)}>${words}</button> `,
          )}
        </p>
        <jackwork-sheets
          .source=${source}
          .view=${view}
          .laid=${sheets}
          .problem=${making.sheetsProblem}
          .old=${making.waiting || making.problem !== ""}
          .pointed=${this.pointed}
          @laid=${() => making.fetchSheets()}
        ></jackwork-sheets>
        <jackwork-printed .source=${source} .kinds=${view.printed} .quantity=${making.wanted.quantity}></jackwork-printed>
        <jackwork-stack .view=${view}></jackwork-stack>
        <jackwork-papers .source=${source}></jackwork-papers>
        ${gluing(source, view)} ${rods(view, making.wanted.quantity)} ${sheets ? needed(sheets) : ""}
      </div>
    </main>`;
  }

  private jump(place: string): void {
    const heading = this.querySelector<HTMLElement>(`#${place}`);
    heading?.scrollIntoView({ block: "start" });
    heading?.setAttribute("tabindex", "-1");
    heading?.focus({ preventScroll: true });
  }

  private forget(): TemplateResult {
    return html`<button type="button" @click=${() => this.making.forgetMeasured()}>Go by My workshop again</button>`;
  }

  private readonly actions: FindingActions = {
    show: (finding: Finding) => (this.pointed = finding.where.part ?? ""),
    leave: () => (this.pointed = ""),
    go: (finding: Finding) => {
      this.pointed = finding.where.part ?? "";
      this.querySelector("jackwork-sheets")?.scrollIntoView({ block: "start" });
    },
    look: () => undefined,
    apply: () => undefined,
    found: () => null,
    mendable: () => false,
  };
}

customElements.define("jackwork-make", MakeRoom);

export const make: Room = {
  id: "make",
  title: "Can I make it?",
  ofDesign: true,
  show: (desk) => html`<jackwork-make .desk=${desk}></jackwork-make>`,
};
