import { html, LitElement, svg, type TemplateResult } from "lit";
import { type DesignView, type Finding, get, type Pair, type WorkshopView } from "./api.js";
import { forceCurve } from "./curve.js";
import { coinTable, findingList, verdict } from "./findings.js";
import { carried, type Direction, force, placed, reach } from "./motion.js";
import { sceneDrawing } from "./scene.js";

/** Seconds that the lever takes to come back from a full press on the page. */
const RETURN_TIME = 1.1;
const MARGIN = 14;

class JackworkPage extends LitElement {
  static override properties = {
    stroke: { attribute: false },
    direction: { attribute: false },
    view: { state: true },
    workshop: { state: true },
    problem: { state: true },
    frontOn: { state: true },
    spot: { state: true },
    hangs: { state: true },
  };

  stroke = 0;
  direction: Direction = "pressing";
  private view: DesignView | null = null;
  private workshop: WorkshopView | null = null;
  private problem = "";
  private frontOn = false;
  private spot: Pair | null = null;
  private hangs = false;
  private reach = 1;
  /** While the lever is held: stroke that belongs to pointer angle zero. */
  private grip: { pointer: number; offset: number } | null = null;
  private returning = 0;

  protected override createRenderRoot(): HTMLElement {
    this.replaceChildren();
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("hashchange", this.loadFromHash);
    void this.begin();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("hashchange", this.loadFromHash);
    cancelAnimationFrame(this.returning);
  }

  private async begin(): Promise<void> {
    try {
      this.workshop = await get<WorkshopView>("/api/workshop");
      await this.load();
    } catch (e) {
      this.fail(e);
    }
  }

  private loadFromHash = (): void => void this.load();

  private async load(): Promise<void> {
    const known = this.workshop?.designs ?? [];
    const wanted = decodeURIComponent(location.hash.slice(1));
    const id = known.some((d) => d.id === wanted) ? wanted : known[0]?.id;
    if (id === undefined) {
      this.problem = "This workshop has no design yet.\nMake one with: jackwork new NAME --from heron";
      return;
    }
    try {
      cancelAnimationFrame(this.returning);
      this.view = await get<DesignView>(`/api/designs/${id.split("/").map(encodeURIComponent).join("/")}`);
      this.problem = "";
      this.reach = reach(this.view.report);
      this.stroke = 0;
      this.hangs = false;
      this.spot = null;
      this.setAttribute("data-ready", id);
    } catch (e) {
      this.view = null;
      this.fail(e);
    }
  }

  private fail(e: unknown): void {
    this.problem = e instanceof Error ? e.message : String(e);
  }

  private moveTo(stroke: number): void {
    const next = Math.max(0, Math.min(this.reach, stroke));
    if (next !== this.stroke) this.direction = next > this.stroke ? "pressing" : "returning";
    this.stroke = next;
    this.hangs = false;
  }

  protected override render(): TemplateResult {
    return html`
      <header>
        <h1>Will it work?</h1>
        ${this.chooser()}
      </header>
      ${this.problem
        ? html`<pre class="problem" role="alert">${this.problem}</pre>`
        : this.view
          ? this.bench(this.view)
          : html`<p class="waiting">Working it out …</p>`}
      <footer>
        <p>
          Contains small parts and coins; keep from children under three. Not assessed to any toy standard. Lasers, fumes,
          fire, blades and pinching gaps hurt: local codes and licensed practice come before anything shown here.
        </p>
      </footer>
    `;
  }

  private chooser(): TemplateResult {
    const designs = this.workshop?.designs ?? [];
    if (designs.length < 2) return html``;
    return html`<label class="chooser"
      >Design
      <select
        @change=${(e: Event) => {
          location.hash = encodeURIComponent((e.target as HTMLSelectElement).value);
        }}
      >
        ${designs.map((d) => html`<option value=${d.id} ?selected=${d.id === this.view?.id}>${d.name}</option>`)}
      </select>
    </label>`;
  }

  private bench(view: DesignView): TemplateResult {
    return html`<main>
      <section class="drawing" aria-label="Box and figure from the side">
        ${this.drawing(view)}
        <p class="reading" aria-live="off">
          <strong>${this.stroke === 0 ? "At rest" : this.direction === "pressing" ? "Pressing" : "Coming back"}</strong>
          stroke ${Math.round(this.stroke * 100)} %, ${this.forceWords(view)}
        </p>
        ${this.hangs ? html`<p class="hangs" role="status">It hangs here: its weight does not bring it back.</p>` : ""}
        <label class="front"
          ><input
            type="checkbox"
            .checked=${this.frontOn}
            @change=${(e: Event) => (this.frontOn = (e.target as HTMLInputElement).checked)}
          />
          front panel on</label
        >
        ${forceCurve(view.report, this.stroke, this.direction)}
      </section>
      <section class="findings" aria-label="Findings">
        ${verdict(view.report)}
        ${findingList(view.report, {
          show: (f) => (this.spot = f.where.at),
          leave: () => (this.spot = null),
          go: (f) => this.goTo(f),
        })}
        ${coinTable(view.report)}
      </section>
    </main>`;
  }

  private goTo(finding: Finding): void {
    cancelAnimationFrame(this.returning);
    if (finding.where.stroke != null) this.moveTo(finding.where.stroke);
    this.spot = finding.where.at;
    this.querySelector(".drawing")?.scrollIntoView({ block: "nearest" });
  }

  private forceWords(view: DesignView): string {
    const f = force(view.report.motion[this.direction], this.stroke);
    if (f == null) return "held fast by friction";
    if (this.direction === "pressing") return f >= 0 ? `push ${f.toFixed(2)} N` : `it pulls ahead with ${(-f).toFixed(2)} N`;
    return f >= 0 ? `it pushes back with ${f.toFixed(2)} N` : `it must be lifted back with ${(-f).toFixed(2)} N`;
  }

  private drawing(view: DesignView): TemplateResult {
    const { bounds, lever } = view.scene;
    const way = view.report.motion[this.direction];
    const body = view.scene.bodies.find((b) => b.name === lever.body);
    const handle = body ? carried(body, placed(way, body, this.stroke), lever.press) : lever.press;
    // Room for what the figure reaches when it moves.
    const width = bounds.maxX - bounds.minX + 2 * MARGIN + 24;
    const height = bounds.maxY - bounds.minY + 2 * MARGIN;
    const f = force(way, this.stroke);
    return html`<svg
      class="scene"
      viewBox="${bounds.minX - MARGIN} ${-bounds.maxY - MARGIN} ${width} ${height}"
      @pointermove=${this.pull}
      @pointerup=${this.letGo}
      @pointercancel=${this.letGo}
    >
      ${svg`
        <defs>
          <pattern id="grain" width="46" height="13" patternUnits="userSpaceOnUse">
            <path d="M0 2c12-2 20 2 46 0M0 6.5c16 1.6 26-1.4 46 0M6 10.4c10-1.2 22 1 34-.4"></path>
          </pattern>
        </defs>
        <g transform="scale(1 -1)">
          ${sceneDrawing({ scene: view.scene, way, stroke: this.stroke, frontOn: this.frontOn, spot: this.spot })}
          <g class="handle" data-handle="lever" role="slider" tabindex="0"
            aria-label="Lever" aria-orientation="vertical" aria-valuemin="0" aria-valuemax="100"
            aria-valuenow=${Math.round(this.stroke * 100)}
            aria-valuetext=${`stroke ${Math.round(this.stroke * 100)} %${f == null ? "" : `, ${f.toFixed(2)} N`}`}
            transform=${`translate(${handle[0]} ${handle[1]})`}
            @pointerdown=${this.take} @keydown=${this.key}>
            <circle class="reach" r="13"></circle>
            <circle class="ring" r="5.5"></circle>
            <path class="arrow" d="M0 -9.5v-8M-3 -14.5l3 -3.5l3 3.5"></path>
          </g>
        </g>`}
    </svg>`;
  }

  /** Pointer angle about the lever's pin, degrees, y up; null when the drawing is not on screen. */
  private pointerAngle(event: PointerEvent): number | null {
    const drawing = this.querySelector<SVGSVGElement>("svg.scene");
    const matrix = drawing?.getScreenCTM();
    if (!matrix || !this.view) return null;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const [px, py] = this.view.scene.lever.pin;
    return (Math.atan2(-at.y - py, at.x - px) * 180) / Math.PI;
  }

  private take = (event: PointerEvent): void => {
    const angle = this.pointerAngle(event);
    if (angle == null || !this.view) return;
    cancelAnimationFrame(this.returning);
    this.grip = { pointer: event.pointerId, offset: this.stroke - angle / this.view.scene.lever.throwDeg };
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    event.preventDefault();
    (event.currentTarget as SVGElement).focus();
  };

  private pull = (event: PointerEvent): void => {
    if (this.grip?.pointer !== event.pointerId || !this.view) return;
    const angle = this.pointerAngle(event);
    if (angle != null) this.moveTo(this.grip.offset + angle / this.view.scene.lever.throwDeg);
  };

  private letGo = (event: PointerEvent): void => {
    if (this.grip?.pointer !== event.pointerId) return;
    this.grip = null;
    this.comeBack();
  };

  /** Plays the lever back while its weight brings it; leaves it where it hangs. */
  private comeBack(): void {
    let last = performance.now();
    const quick = matchMedia("(prefers-reduced-motion: reduce)").matches;
    const frame = (now: number): void => {
      if (!this.view || this.stroke <= 0) return;
      this.direction = "returning";
      const f = force(this.view.report.motion.returning, this.stroke);
      if (f == null || f <= 0) {
        this.hangs = true;
        return;
      }
      this.stroke = Math.max(0, this.stroke - (quick ? 0.02 : (now - last) / 1000 / RETURN_TIME));
      last = now;
      if (quick) frame(now);
      else this.returning = requestAnimationFrame(frame);
    };
    this.returning = requestAnimationFrame(frame);
  }

  private key = (event: KeyboardEvent): void => {
    const step = event.shiftKey ? 0.1 : 0.02;
    const moves: Record<string, number> = {
      ArrowDown: this.stroke + step,
      ArrowRight: this.stroke + step,
      ArrowUp: this.stroke - step,
      ArrowLeft: this.stroke - step,
      PageDown: this.stroke + 0.1,
      PageUp: this.stroke - 0.1,
      Home: 0,
      End: 1,
    };
    const to = moves[event.key];
    if (to === undefined) return;
    cancelAnimationFrame(this.returning);
    this.moveTo(to);
    event.preventDefault();
  };
}

customElements.define("jackwork-page", JackworkPage);
