import { html, LitElement, type TemplateResult } from "lit";
import { type Attempt, type Brought, get, type Grounds, type Made, type Pair, post } from "../core/api.js";
import { send } from "./file.js";
import { Figure } from "./model.js";
import { Ruler, sizePanel } from "./ruler.js";
import { sheet, type SheetState } from "./sheet.js";
import { type StandGrip, standing, standPanel, type StandState } from "./stand.js";
import { partList, partPanel, pointList, pointPanel } from "./steps.js";

const STEPS = ["Size", "Parts", "Points", "On its box"] as const;

/** A drawing or a picture on its way to a design, in four steps. */
class BringNew extends LitElement {
  static override properties = { file: { attribute: false }, stepAt: { state: true }, problem: { state: true }, busy: { state: true } };

  file: File | null = null;
  /** Told the new design's id. */
  done: (id: string) => void = () => undefined;

  private stepAt = 0;
  private problem = "";
  private busy = false;
  private figure: Figure | null = null;
  private grounds: Grounds | null = null;
  private chosen = "";
  private point = "";
  private placing = false;
  private readonly ruler = new Ruler();
  private attempt: Attempt | null = null;
  private stroke = 0;
  private grip: StandGrip | null = null;
  private asked = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.begin();
  }

  private async begin(): Promise<void> {
    await this.try(async () => {
      this.grounds = await get<Grounds>("/api/grounds");
      const figure = new Figure(this.grounds.sheets[0]?.name ?? "");
      figure.box = this.grounds.boxes[0]?.id ?? "";
      this.figure = figure;
      if (this.file) await this.take(this.file);
    });
  }

  private async try(work: () => Promise<void>): Promise<void> {
    this.busy = true;
    this.problem = "";
    try {
      await work();
    } catch (e) {
      this.problem = e instanceof Error ? e.message : String(e);
    }
    this.busy = false;
    this.requestUpdate();
  }

  /** Reads a file and adds what it offers; the first also says whether its size must be asked for. */
  async take(file: File): Promise<void> {
    const { figure } = this;
    if (!figure) return;
    await this.try(async () => {
      const scale = figure.files[0]?.read.picture === false ? 1 : (figure.files[0]?.read.scale ?? 1);
      const read = await send<Brought>("/api/bring", file, scale);
      if (read.shapes.length === 0) throw new Error(`${file.name} has no closed outline.\nClose the parts' lines and drop it here again.`);
      figure.add(file, read);
      this.chosen = figure.parts[0]?.key ?? "";
      if (figure.files.length === 1) this.ruler.across(figure, figure.parts[0]?.shape.key ?? read.shapes[0]?.key ?? "", 0);
    });
  }

  private async resize(wanted: number): Promise<void> {
    const { figure } = this;
    if (!figure || !(wanted > 0) || !(this.ruler.length > 0)) return;
    const grown = wanted / this.ruler.length;
    await this.try(async () => {
      const reads = await Promise.all(figure.files.map((f) => send<Brought>("/api/bring", f.file, f.read.scale * grown)));
      figure.resized(reads);
      this.ruler.grow(grown);
    });
  }

  protected override render(): TemplateResult {
    const { figure, grounds } = this;
    if (!figure || !grounds || figure.files.length === 0) {
      return html`${this.refusal()} ${this.busy ? html`<p class="waiting" role="status">Reading …</p>` : ""}`;
    }
    return html`
      <ol class="steps">
        ${STEPS.map(
          (name, i) =>
            html`<li>
              <button type="button" class="plain" aria-current=${i === this.stepAt ? "step" : "false"} @click=${() => this.goTo(i)}>
                ${name}
              </button>
            </li>`,
        )}
      </ol>
      ${this.refusal()}
      <div class="two">
        ${this.stepAt === 3 ? standing(figure, grounds, this.standState()) : sheet(figure, this.sheetState())}
        <div class="beside">
          ${[this.sizePanel, this.partsPanel, this.pointsPanel, this.lastPanel][this.stepAt]?.call(this, figure, grounds)}
        </div>
      </div>
    `;
  }

  private refusal(): TemplateResult | string {
    return this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : "";
  }

  private goTo(step: number): void {
    this.stepAt = step;
    this.placing = false;
    if (step === 3) void this.look();
  }

  private next(words: string): TemplateResult {
    return html`<p class="buttons">
      <button type="button" class="apply next" ?disabled=${this.busy} @click=${() => this.goTo(this.stepAt + 1)}>${words}</button>
    </p>`;
  }

  private sizePanel(figure: Figure): TemplateResult {
    return html`${sizePanel(figure, this.ruler, (wanted) => void this.resize(wanted))} ${this.next("That is its size")}`;
  }

  private partsPanel(figure: Figure, grounds: Grounds): TemplateResult {
    const part = figure.parts.find((p) => p.key === this.chosen);
    return html`<p class="say">What is each part?</p>
      ${partList(figure, this.chosen, (key) => this.choose(key))}
      ${part
        ? partPanel(figure, part, grounds, () => this.requestUpdate())
        : html`<p class="quiet">Click an outline to make a part of it.</p>`}
      <p class="buttons">
        <label class="another plain"
          >Add another drawing or picture
          <input
            type="file"
            accept=".svg,.png,image/svg+xml,image/png"
            @change=${(e: Event) => {
              const file = (e.target as HTMLInputElement).files?.[0];
              if (file) void this.take(file);
            }}
        /></label>
      </p>
      ${this.next("These are the parts")}`;
  }

  private choose(key: string): void {
    this.chosen = key;
    this.requestUpdate();
  }

  private pointsPanel(figure: Figure): TemplateResult {
    const point = figure.points.find((p) => p.key === this.point);
    return html`<p class="say">What happens at each point?</p>
      ${pointList(figure, this.point, (key) => this.pick(key))}
      <p class="buttons">
        <button
          type="button"
          class="set-point"
          aria-pressed=${this.placing ? "true" : "false"}
          @click=${() => {
            this.placing = !this.placing;
            this.requestUpdate();
          }}
        >
          Set a point
        </button>
        ${this.placing
          ? html`<button type="button" class="plain" @click=${() => this.setPoint(middle(figure, this.chosen))}>in the part's middle</button>`
          : ""}
      </p>
      ${this.placing ? html`<p class="quiet">Click where it is.</p>` : ""}
      ${point ? pointPanel(figure, point, () => this.requestUpdate()) : ""} ${this.next("On to the box")}`;
  }

  private pick(key: string): void {
    this.point = key;
    this.placing = false;
    this.requestUpdate();
  }

  private setPoint(at: Pair): void {
    const point = this.figure?.setPoint([Math.round(at[0] * 10) / 10, Math.round(at[1] * 10) / 10]);
    if (point) this.pick(point.key);
  }

  private lastPanel(figure: Figure, grounds: Grounds): TemplateResult {
    return html`${standPanel(figure, grounds, this.standState())}
      <p class="buttons">
        <button type="button" class="apply make" ?disabled=${this.busy || !this.attempt?.scene} @click=${() => void this.make()}>
          Make this design
        </button>
        ${this.busy ? html`<span class="waiting" role="status">Trying it …</span>` : ""}
      </p>`;
  }

  private sheetState(): SheetState {
    const measuring = this.stepAt === 0;
    return {
      part: this.stepAt === 1 ? this.chosen : "",
      point: this.point,
      points: this.stepAt === 2,
      ends: measuring ? this.ruler.ends : null,
      pickShape: (key, file) => this.pickShape(key, file),
      pickPoint: (key) => this.pick(key),
      pickPlace: this.placing ? (at) => this.setPoint(at) : null,
      dragEnd: (end, at) => {
        if (this.ruler.ends) this.ruler.ends[end] = at;
        this.requestUpdate();
      },
      dragPoint: (key, at) => {
        const point = this.figure?.points.find((p) => p.key === key);
        if (point) this.figure?.movePoint(point, at);
        this.requestUpdate();
      },
    };
  }

  private pickShape(key: string, file: number): void {
    const { figure } = this;
    const shape = figure?.files[file]?.read.shapes.find((s) => s.key === key);
    if (!figure || !shape) return;
    if (this.stepAt === 0) this.ruler.across(figure, key, file);
    else if (this.stepAt === 1) this.chosen = (figure.partOf(shape, file) ?? figure.choose(shape, file)).key;
    else this.chosen = figure.partOf(shape, file)?.key ?? this.chosen;
    this.requestUpdate();
  }

  private standState(): StandState {
    return {
      attempt: this.attempt,
      stroke: this.stroke,
      grip: this.grip,
      take: (grip) => {
        this.grip = grip;
        this.requestUpdate();
        if (!grip) void this.look();
      },
      said: () => void this.look(),
      pull: (stroke) => {
        this.stroke = stroke;
        this.requestUpdate();
      },
      move: (shift) => {
        const { figure } = this;
        if (!figure) return;
        figure.shift = shift;
        figure.placed = true;
        this.attempt = this.attempt ? { ...this.attempt, scene: null, motion: null } : null;
        this.requestUpdate();
        // In the hand it is not tried: what is answered would stand beside it, and shift it.
        if (!this.grip) void this.look(250);
      },
      go: (about) => this.show(about),
    };
  }

  /** Goes to the step where a part or point is spoken of. */
  private show(about: string): void {
    const part = this.figure?.parts.find((p) => p.name === about);
    const point = this.figure?.points.find((p) => p.name === about);
    if (part) this.chosen = part.key;
    if (point) this.point = point.key;
    if (part || point) this.goTo(part ? 1 : 2);
  }

  /** Tries what was said so far; only the newest answer counts. */
  private async look(wait = 0): Promise<void> {
    const ask = ++this.asked;
    if (this.grip) return;
    if (wait > 0) await new Promise((ready) => setTimeout(ready, wait));
    const { figure } = this;
    if (ask !== this.asked || !figure) return;
    await this.try(async () => {
      const attempt = await post<Attempt>("/api/bring/attempt", figure.plan);
      if (ask !== this.asked || this.grip) return;
      this.attempt = attempt;
      figure.shift = attempt.shift;
    });
  }

  private async make(): Promise<void> {
    const { figure } = this;
    if (!figure) return;
    await this.try(async () => {
      const made = await post<Made>("/api/bring/make", figure.plan);
      this.done(made.id);
    });
  }
}

function middle(figure: Figure, key: string): Pair {
  const part = figure.parts.find((p) => p.key === key) ?? figure.parts[0];
  const ring = (part && figure.rings(part)[0]) ?? [[0, 0] as Pair];
  const sum = ring.reduce(([a, b], [x, y]) => [a + x, b + y] as Pair, [0, 0] as Pair);
  return [sum[0] / ring.length, sum[1] / ring.length];
}

customElements.define("jackwork-bring-new", BringNew);
