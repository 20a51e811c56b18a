import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { get, type MakeSolids, type PrintedKind } from "../core/api.js";
import { type Source, words } from "./making.js";
import type { Solids } from "../solids.js";
import { lengthsShown } from "../core/units.js";

/** What draws them is fetched when they are looked at, not before. */
const BUNDLE = "/solids.js";
/** Turning by itself, rad a second. */
const SLOWLY = 0.35;
/** From picture to picture while they turn, ms: some browsers draw them without a graphics card. */
const AT_LEAST = 40;
const STEP = Math.PI / 12;
/** Dragged over so many px, it has turned by one radian. */
const PIXELS_A_RADIAN = 90;
const STEEPEST = 1.5;

/** Printed parts, turning. */
class MakePrinted extends LitElement {
  static override properties = {
    source: { attribute: false },
    kinds: { attribute: false },
    quantity: { type: Number },
    turning: { state: true },
    state: { state: true },
    problem: { state: true },
  };

  source: Source | null = null;
  kinds: PrintedKind[] = [];
  quantity = 1;
  private turning = !matchMedia("(prefers-reduced-motion: reduce)").matches;
  private state: "waiting" | "drawn" | "flat" = "waiting";
  private problem = "";
  private solids: Solids | null = null;
  private readonly poses = new Map<string, { turn: number; tilt: number }>();
  private held: { name: string; x: number; y: number } | null = null;
  private frame = 0;
  private last = 0;
  private loaded = "";
  private inSight = false;
  private readonly sight = new IntersectionObserver((entries) => {
    this.inSight = entries[entries.length - 1]?.isIntersecting ?? false;
    this.wake();
  });
  private readonly sizes = new ResizeObserver(() => this.drawAll());

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.sight.observe(this);
    this.sizes.observe(this);
    if (this.hasUpdated) {
      this.loaded = "";
      void this.load();
    }
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    cancelAnimationFrame(this.frame);
    this.frame = 0;
    this.sight.disconnect();
    this.sizes.disconnect();
    this.solids?.dispose();
    this.solids = null;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has("source")) void this.load();
    this.drawAll();
    this.wake();
  }

  protected override render(): TemplateResult {
    if (this.kinds.length === 0) return html``;
    return html`<section class="printed" aria-labelledby="printed-title">
      <h2 id="printed-title">Printed parts</h2>
      ${this.state === "flat" ? html`<p class="quiet">This browser draws nothing in three dimensions, so they are told in words.</p>` : ""}
      ${this.state === "drawn"
        ? html`<p class="quiet">
            Drag to turn, or use the arrow keys.
            <button type="button" class="plain keep-turning" aria-pressed=${this.turning} @click=${() => (this.turning = !this.turning)}>
              ${this.turning ? "Let them stand still" : "Let them turn"}
            </button>
          </p>`
        : ""}
      ${this.problem ? html`<p class="problem" role="alert">${this.problem}</p>` : ""}
      <div class="printed-list">${this.kinds.map((kind) => this.kind(kind))}</div>
    </section>`;
  }

  private kind(kind: PrintedKind): TemplateResult {
    const many = kind.each * this.quantity;
    return html`<figure class="printed-kind">
      ${this.state === "flat"
        ? ""
        : html`<canvas
            tabindex="0"
            role="img"
            data-solid=${kind.name}
            aria-label=${`${kind.name}, seen in three dimensions; arrow keys turn it`}
            @pointerdown=${(e: PointerEvent) => this.take(kind.name, e)}
            @pointermove=${(e: PointerEvent) => this.drag(e)}
            @pointerup=${() => (this.held = null)}
            @pointercancel=${() => (this.held = null)}
            @keydown=${(e: KeyboardEvent) => this.key(kind.name, e)}
          ></canvas>`}
      <figcaption>
        <strong>${kind.name}</strong>, ${many === 1 ? "one" : many} to print: ${kind.what}.
        <span class="quiet"
          >${lengthsShown([kind.width, kind.depth, kind.height], 1)}, ${kind.grams.toFixed(2)} g each, printed solid</span
        >
      </figcaption>
    </figure>`;
  }

  private async load(): Promise<void> {
    const { source } = this;
    if (!source || this.kinds.length === 0 || source.key === this.loaded) return;
    this.loaded = source.key;
    try {
      const bundle = (await import(BUNDLE)) as typeof import("../solids.js");
      const { solids } = await get<MakeSolids>(source.path("solids"));
      if (this.loaded !== source.key || !this.isConnected) return;
      const style = getComputedStyle(this);
      this.solids ??= bundle.Solids.open(style.getPropertyValue("--printed").trim(), style.getPropertyValue("--edge").trim());
      this.solids?.load(solids);
      this.state = this.solids ? "drawn" : "flat";
      this.problem = "";
    } catch (e) {
      this.problem = words(e);
      this.state = "flat";
    }
    this.requestUpdate();
  }

  private pose(name: string): { turn: number; tilt: number } {
    let pose = this.poses.get(name);
    if (!pose) this.poses.set(name, (pose = { turn: 0.6, tilt: 0.55 }));
    return pose;
  }

  private drawAll(): void {
    for (const canvas of this.querySelectorAll("canvas")) this.draw(canvas);
  }

  private draw(canvas: HTMLCanvasElement): void {
    const name = canvas.dataset["solid"] ?? "";
    const { turn, tilt } = this.pose(name);
    this.solids?.draw(name, canvas, turn, tilt);
    canvas.dataset["turn"] = turn.toFixed(3);
    canvas.dataset["tilt"] = tilt.toFixed(3);
  }

  /** Turns them as long as they are wanted to, and seen. */
  private wake(): void {
    if (this.frame || !this.turning || !this.inSight || !this.solids) return;
    this.last = performance.now();
    const step = (now: number): void => {
      this.frame = 0;
      if (!this.turning || !this.inSight || !this.solids) return;
      this.frame = requestAnimationFrame(step);
      if (now - this.last < AT_LEAST) return;
      for (const kind of this.kinds) {
        if (this.held?.name !== kind.name) this.pose(kind.name).turn += (SLOWLY * Math.min(100, now - this.last)) / 1000;
      }
      this.last = now;
      this.drawAll();
    };
    this.frame = requestAnimationFrame(step);
  }

  private take(name: string, event: PointerEvent): void {
    if (event.button !== 0) return;
    this.held = { name, x: event.clientX, y: event.clientY };
    this.turning = false;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
  }

  private drag(event: PointerEvent): void {
    const { held } = this;
    if (!held) return;
    this.turn(held.name, (event.clientX - held.x) / PIXELS_A_RADIAN, (event.clientY - held.y) / PIXELS_A_RADIAN);
    this.held = { ...held, x: event.clientX, y: event.clientY };
  }

  private key(name: string, event: KeyboardEvent): void {
    const by = { ArrowLeft: [-STEP, 0], ArrowRight: [STEP, 0], ArrowUp: [0, -STEP], ArrowDown: [0, STEP] }[event.key];
    if (!by) return;
    event.preventDefault();
    this.turning = false;
    this.turn(name, by[0] ?? 0, by[1] ?? 0);
  }

  private turn(name: string, turn: number, tilt: number): void {
    const pose = this.pose(name);
    pose.turn += turn;
    pose.tilt = Math.max(-STEEPEST, Math.min(STEEPEST, pose.tilt + tilt));
    this.drawAll();
  }
}

customElements.define("jackwork-printed", MakePrinted);
