import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import type { DesignView, Finding } from "./api.js";
import { coinTable } from "./coins.js";
import { forceCurve } from "./curve.js";
import type { Desk } from "./desk.js";
import { drawing } from "./drawing.js";
import { findingList, verdict } from "./findings.js";
import { Lever } from "./lever.js";
import type { Direction } from "./motion.js";
import { reading } from "./reading.js";
import type { Room } from "./rooms.js";

/** Will it work? One design's drawing in the hand, its findings beside it. */
class WorkRoom extends LitElement {
  static override properties = {
    desk: { attribute: false },
    frontOn: { state: true },
    looked: { state: true },
    kept: { state: true },
  };

  desk: Desk | null = null;
  private readonly lever = new Lever(this);
  private fitted: DesignView | null = null;
  private frontOn = false;
  /** The finding under the pointer or the focus. */
  private looked: Finding | null = null;
  /** The finding whose place was asked for last. */
  private kept: Finding | null = null;

  /** 0 at rest to 1 fully pressed. */
  get stroke(): number {
    return this.lever.stroke;
  }

  set stroke(stroke: number) {
    this.lever.moveTo(stroke);
  }

  get direction(): Direction {
    return this.lever.direction;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("desk")) this.desk?.watch(this);
    const view = this.desk?.view ?? null;
    if (view && view !== this.fitted) {
      if (view.id !== this.fitted?.id) this.looked = this.kept = null;
      this.fitted = view;
      this.lever.fit(view);
    }
  }

  protected override render(): TemplateResult {
    const view = this.desk?.view;
    if (!view) return html``;
    return html`<main>
      <section class="drawing" aria-label="Box and figure from the side">
        ${drawing(view, this.lever, this.frontOn, this.looked ?? this.kept)}
        <div class="beneath">
          <div class="words">${reading(view, this.lever)} ${this.frontSwitch()}</div>
          ${forceCurve(view.report, this.lever.stroke, this.lever.direction)}
        </div>
      </section>
      <section class="findings" aria-label="Findings">
        ${verdict(view.report)}
        ${findingList(view.report, {
          show: (f) => this.lookAt(f),
          leave: () => (this.looked = null),
          go: (f) => this.goTo(f),
        })}
        ${coinTable(view.report)}
      </section>
    </main>`;
  }

  private frontSwitch(): TemplateResult {
    return html`<label class="front"
      ><input
        type="checkbox"
        .checked=${this.frontOn}
        @change=${(e: Event) => (this.frontOn = (e.target as HTMLInputElement).checked)}
      />
      front panel on</label
    >`;
  }

  private lookAt(finding: Finding): void {
    this.looked = finding;
    if (this.kept !== finding) this.kept = null;
  }

  private goTo(finding: Finding): void {
    if (finding.where.stroke != null) this.lever.moveTo(finding.where.stroke);
    this.kept = finding;
    this.querySelector(".scene")?.scrollIntoView({ block: "nearest" });
  }
}

customElements.define("jackwork-work", WorkRoom);

export const work: Room = {
  id: "",
  title: "Will it work?",
  ofDesign: true,
  show: (desk) => html`<jackwork-work .desk=${desk}></jackwork-work>`,
};
