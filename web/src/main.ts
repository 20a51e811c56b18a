import { html, LitElement, type TemplateResult } from "lit";
import { type DesignView, type Finding, get, type WorkshopView } from "./api.js";
import { coinTable } from "./coins.js";
import { forceCurve } from "./curve.js";
import { drawing } from "./drawing.js";
import { findingList, verdict } from "./findings.js";
import { Lever } from "./lever.js";
import type { Direction } from "./motion.js";
import { reading } from "./reading.js";

/** The page: one design of the workshop, its drawing in the hand, its findings beside it. */
class JackworkPage extends LitElement {
  static override properties = {
    view: { state: true },
    workshop: { state: true },
    chosen: { state: true },
    waiting: { state: true },
    problem: { state: true },
    frontOn: { state: true },
    looked: { state: true },
    kept: { state: true },
  };

  private readonly lever = new Lever(this);
  private view: DesignView | null = null;
  private workshop: WorkshopView | null = null;
  private chosen = "";
  private waiting = true;
  private problem = "";
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
    this.replaceChildren();
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("hashchange", this.load);
    void this.begin();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("hashchange", this.load);
  }

  private async begin(): Promise<void> {
    try {
      this.workshop = await get<WorkshopView>("/api/workshop");
      await this.load();
    } catch (e) {
      this.fail(e);
    }
  }

  /** Fetches the design that the address names, or the first. */
  private readonly load = async (): Promise<void> => {
    const id = decoded(location.hash.slice(1)) || this.workshop?.designs[0]?.id;
    if (id === undefined) {
      this.fail("This workshop has no design yet.\nMake one with: jackwork new NAME --from heron");
      return;
    }
    this.chosen = id;
    this.waiting = true;
    this.problem = "";
    this.removeAttribute("data-ready");
    try {
      const view = await get<DesignView>(`/api/designs/${id.split("/").map(encodeURIComponent).join("/")}`);
      if (this.chosen !== id) return; // another was chosen while this one was on its way
      this.view = view;
      this.lever.fit(view);
      this.looked = null;
      this.kept = null;
      this.waiting = false;
      document.title = `${view.scene.name}, Jackwork`;
      await this.updateComplete;
      this.setAttribute("data-ready", id);
    } catch (e) {
      if (this.chosen === id) this.fail(e);
    }
  };

  private fail(e: unknown): void {
    this.view = null;
    this.waiting = false;
    this.problem = e instanceof Error ? e.message : String(e);
  }

  protected override render(): TemplateResult {
    return html`
      <header>
        <h1>Will it work?</h1>
        ${this.chooser()}
      </header>
      ${this.problem ? this.refusal() : ""}
      ${this.waiting ? html`<p class="waiting" role="status">Working it out …</p>` : ""}
      ${this.view && !this.waiting ? this.bench(this.view) : ""}
      <footer>
        <p>
          Contains small parts and coins; keep from children under three. Not assessed to any toy standard. Lasers, fumes,
          fire, blades and pinching gaps hurt: local codes and licensed practice come before anything shown here.
        </p>
      </footer>
    `;
  }

  private refusal(): TemplateResult {
    return html`<pre class="problem" role="alert">${this.problem}</pre>
      <button type="button" class="again" @click=${() => void this.begin()}>Read it again</button>`;
  }

  private chooser(): TemplateResult {
    const designs = this.workshop?.designs ?? [];
    const known = designs.some((d) => d.id === this.chosen);
    if (designs.length === 0 || (designs.length === 1 && known)) return html``;
    return html`<label class="chooser"
      >Design
      <select
        @change=${(e: Event) => {
          location.hash = encodeURIComponent((e.target as HTMLSelectElement).value);
        }}
      >
        ${known ? "" : html`<option value="" disabled .selected=${true}>choose one</option>`}
        ${designs.map((d) => html`<option value=${d.id} .selected=${d.id === this.chosen}>${d.name}</option>`)}
      </select>
    </label>`;
  }

  private bench(view: DesignView): TemplateResult {
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

/** A part of the address as text; the text itself when it was never encoded rightly. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

customElements.define("jackwork-page", JackworkPage);
