import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { type DesignView, designPath, type Finding, get, type Playback, type Remedy } from "../core/api.js";
import "./change.js";
import { coinTable } from "./coins.js";
import { forceCurve, gestureCurves } from "./curve.js";
import type { Desk } from "../core/desk.js";
import { Dragging } from "./dragging.js";
import { drawing } from "./drawing.js";
import { filming } from "./filming.js";
import { type FindingActions, passes, troubles, verdict } from "../core/findings.js";
import { Lever } from "./lever.js";
import type { Direction } from "../core/motion.js";
import "./pieces.js";
import { Playing } from "./playing.js";
import { reading } from "./reading.js";
import type { Room } from "../core/room.js";
import "./tour.js";
import "./tray.js";
import "./tune.js";
import { asSentence } from "../core/units.js";

/** Will it work? One design's drawing in the hand, its findings beside it. */
class WorkRoom extends LitElement {
  static override properties = {
    desk: { attribute: false },
    frontOn: { state: true },
    changing: { state: true },
    looked: { state: true },
    kept: { state: true },
    remedies: { state: true },
  };

  desk: Desk | null = null;
  private readonly lever = new Lever(this);
  private readonly playing = new Playing(this);
  private readonly dragging = new Dragging(this, () => this.desk);
  private fitted: DesignView | null = null;
  private frontOn = false;
  private changing = false;
  /** The finding under the pointer or the focus. */
  private looked: Finding | null = null;
  /** The finding whose place was asked for last. */
  private kept: Finding | null = null;
  /** What was found for each finding, of the version looked at. */
  private remedies: Record<string, Remedy | "looking"> = {};

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
    const view = this.desk?.shown ?? null;
    if (!view || view === this.fitted) return;
    if (view.id === this.fitted?.id) {
      this.lever.refit(view);
      if (view.version !== this.fitted.version) this.settle();
    } else {
      this.looked = this.kept = null;
      this.lever.fit(view);
      this.settle();
    }
    this.fitted = view;
  }

  /** Another design, or another state of it: what was looked at before is of no use. */
  private settle(): void {
    this.remedies = {};
    if (this.playing.film) this.playing.takeAway();
  }

  protected override render(): TemplateResult {
    const { desk } = this;
    const [view, saved] = [desk?.shown, desk?.view];
    if (!desk || !view || !saved) return html``;
    return html`<main class=${this.changing ? "with-changing" : ""} @film=${this.film}>
      <section class="drawing" aria-label="Box and figure from the side">
        <jackwork-tour></jackwork-tour>
        ${drawing({
          view,
          saved,
          lever: this.lever,
          playing: this.playing,
          dragging: this.dragging,
          frontOn: this.frontOn,
          changing: this.changing,
          pointed: this.looked ?? this.kept,
        })}
        <div class="above-bench">
          <jackwork-tray .view=${saved}></jackwork-tray>
          <div class="switches">${this.frontSwitch()} ${this.changeSwitch()}</div>
        </div>
        ${this.playing.film
          ? filming(this.playing, this.playing.film.scene ? `This piece with ${this.playing.film.coin}` : this.playing.film.coin)
          : html`<div class="beneath">
              <div class="words">${reading(view, this.lever)}</div>
              ${forceCurve(view.report, this.lever.stroke, this.lever.direction)}
              ${gestureCurves(view.scene, view.report, this.lever.stroke)}
            </div>`}
      </section>
      <section class="findings" aria-label="Findings">
        ${verdict(view.report, desk.isGlimpse)}
        ${desk.isGlimpse
          ? html`<p class="stale" role="status">
              As numbered, while you drag; spread, clashes and thin necks follow when you let go.
            </p>`
          : ""}
        ${troubles(view.report, this.actions)}
      </section>
      ${this.changing ? html`<jackwork-change .desk=${desk}></jackwork-change>` : ""}
      <section class="findings more-findings" aria-label="Sample pieces, and what passed">
        <jackwork-pieces .view=${saved}></jackwork-pieces>
        <jackwork-tuning .desk=${desk}></jackwork-tuning>
        ${passes(view.report, this.actions)} ${coinTable(view.report)}
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

  private changeSwitch(): TemplateResult {
    return html`<button
      type="button"
      class="change-switch"
      aria-pressed=${this.changing}
      @click=${() => {
        this.changing = !this.changing;
        this.playing.takeAway();
        if (this.changing) this.lever.moveTo(0);
      }}
    >
      ${this.changing ? "Done changing" : "Change it"}
    </button>`;
  }

  private readonly film = (event: CustomEvent<Playback>): void => {
    this.lever.moveTo(0);
    this.kept = null;
    this.playing.show(event.detail);
    this.querySelector(".scene")?.scrollIntoView({ block: "nearest" });
  };

  private readonly actions: FindingActions = {
    show: (finding) => {
      this.looked = finding;
      if (this.kept !== finding) this.kept = null;
    },
    leave: () => (this.looked = null),
    go: (finding) => {
      this.playing.takeAway();
      if (finding.where.stroke != null) this.lever.moveTo(finding.where.stroke);
      this.kept = finding;
      this.querySelector(".scene")?.scrollIntoView({ block: "nearest" });
    },
    look: (finding) => void this.lookForRemedy(finding),
    apply: (finding, remedy) => void this.desk?.edit(`${finding.question} settled`, remedy.steps),
    found: (finding) => this.remedies[finding.id] ?? null,
    mendable: (finding) => this.desk?.view?.mendable.includes(finding.id) ?? false,
  };

  private async lookForRemedy(finding: Finding): Promise<void> {
    const view = this.desk?.view;
    if (!view) return;
    const keep = (found: Remedy | "looking") => (this.remedies = { ...this.remedies, [finding.id]: found });
    keep("looking");
    try {
      const found = await get<Remedy>(`${designPath(view.id, "remedy")}?finding=${encodeURIComponent(finding.id)}`);
      if (this.desk?.view === view) keep(found);
    } catch (e) {
      keep({ finding: finding.id, words: asSentence(e instanceof Error ? e.message : String(e)), steps: [] });
    }
  }
}

customElements.define("jackwork-work", WorkRoom);

export const work: Room = {
  id: "",
  title: "Will it work?",
  ofDesign: true,
  show: (desk) => html`<jackwork-work .desk=${desk}></jackwork-work>`,
};
