import { html, LitElement, svg, type TemplateResult } from "lit";
import type { LayerPlace, MakeView, Part, RodThrough, StackPart } from "../core/api.js";
import { lengthsShown } from "../core/units.js";

/** Depth runs toward the lower left, shortened by half: a cabinet drawing. */
const ASKEW = (-145 * Math.PI) / 180;
const SHORTENED = 0.5;
/** From layer to layer when taken wholly apart, mm of the drawing. */
const APART = 30;
const MARGIN = 6;

interface At {
  /** Of its back and front, mm of the drawing. */
  back: [number, number];
  front: [number, number];
}

const paths = new WeakMap<Part, string>();

function outline(part: Part): string {
  let path = paths.get(part);
  if (path === undefined) {
    path = part.rings.map((ring) => ring.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x} ${y}`).join("") + "Z").join("");
    paths.set(part, path);
  }
  return path;
}

/** Box and figure layer by layer, drawn apart by a slider. */
class MakeStack extends LitElement {
  static override properties = { view: { attribute: false }, apart: { state: true }, chosen: { state: true } };

  view: MakeView | null = null;
  /** 0 together to 100 taken apart. */
  private apart = 0;
  /** The layer that is looked at. */
  private chosen: number | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    const { view } = this;
    if (!view) return html``;
    const places = new Map(view.layers.map((layer, i) => [layer.layer, this.at(layer, i)]));
    const [x, y, width, height] = room(view, places);
    return html`<section class="stack" aria-labelledby="stack-title">
      <h2 id="stack-title">Layers</h2>
      <p>${view.layers.length} layers, ${lengthsShown([view.thickness], 1)} thick together, without the case.</p>
      <label class="taking-apart"
        ><span>Take it apart</span>
        <input
          type="range"
          min="0"
          max="100"
          .value=${String(this.apart)}
          @input=${(e: Event) => (this.apart = Number((e.target as HTMLInputElement).value))}
      /></label>
      <svg class="stack-drawing" viewBox=${`${x} ${-y - height} ${width} ${height}`} role="img" aria-label="The layers, one before the other">
        <g transform="scale(1 -1)">
          ${view.layers.map((layer, i) => this.layer(view, layer, view.layers[i + 1], places))}
        </g>
      </svg>
      <ol class="layer-list" aria-label="Layers, the foremost first">
        ${[...view.layers].reverse().map((layer) => this.named(view, layer))}
      </ol>
    </section>`;
  }

  private at({ back, front }: LayerPlace, index: number): At {
    const spread = (index * APART * this.apart) / 100;
    const point = (depth: number): [number, number] => {
      const along = SHORTENED * depth + spread;
      return [along * Math.cos(ASKEW), along * Math.sin(ASKEW)];
    };
    return { back: point(back), front: point(front) };
  }

  private layer(view: MakeView, { layer }: LayerPlace, next: LayerPlace | undefined, places: Map<number, At>): TemplateResult {
    const at = places.get(layer);
    if (!at) return svg``;
    const others = this.chosen !== null && this.chosen !== layer;
    const parts = view.stack.filter(({ part }) => part.layer === layer);
    return svg`${seenRods(view.rods.filter((rod) => rod.from <= layer && rod.to >= layer), at.back, at.front)}
      <g class=${others ? "layer faded" : "layer"} data-layer=${layer}>
        ${parts.map((one) => solid(one, at))}
      </g>
      ${this.between(view, layer, next?.layer, at, places)}
      ${view.rods.filter((rod) => rod.to === layer).map((rod) => rodEnd(rod, at))}`;
  }

  /** What is seen of rods between a layer and the next one before it. */
  private between(view: MakeView, layer: number, next: number | undefined, at: At, places: Map<number, At>): TemplateResult {
    const to = next === undefined ? undefined : places.get(next);
    if (next === undefined || !to) return svg``;
    return seenRods(view.rods.filter((rod) => rod.from <= layer && rod.to >= next), at.front, to.back);
  }

  private named(view: MakeView, { layer }: LayerPlace): TemplateResult {
    const parts = view.stack.filter(({ part }) => part.layer === layer);
    const thick = Math.max(...parts.map(({ thickness }) => thickness));
    return html`<li>
      <span class="quiet">${layer}</span>
      <button
        type="button"
        class="plain"
        aria-pressed=${this.chosen === layer}
        data-show-layer=${layer}
        @click=${() => (this.chosen = this.chosen === layer ? null : layer)}
      >
        ${parts.map(({ part }) => part.name).join(", ")}</button
      ><span class="quiet thick">${lengthsShown([thick], 2)}</span>
    </li>`;
  }
}

/** A part as a slab: its rear face and what is between in shade, its front in its own material. */
function solid({ part }: StackPart, { back, front }: At): TemplateResult {
  const path = outline(part);
  const steps = [0, 0.34, 0.67].map((share) => [
    back[0] + share * (front[0] - back[0]),
    back[1] + share * (front[1] - back[1]),
  ]);
  return svg`<g data-part=${part.name}><title>${part.name}</title>
    ${steps.map(([x, y]) => svg`<path class="rim" d=${path} transform=${`translate(${x} ${y})`}></path>`)}
    <g transform=${`translate(${front[0]} ${front[1]})`}>
      <path class="part ${part.material}" d=${path} fill=${part.paint ?? ""}></path>
      ${part.engraving.map(
        (line) => svg`<path class="engraved" d=${line.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x} ${y}`).join("")}></path>`,
      )}
    </g>
  </g>`;
}

/** Rods from one depth to another; what lies before them is drawn over them. */
function seenRods(rods: RodThrough[], from: [number, number], to: [number, number]): TemplateResult {
  return svg`${rods.map(({ name, at: [x, y], diameter }) => {
    const line = `M${x + from[0]} ${y + from[1]}L${x + to[0]} ${y + to[1]}`;
    return svg`<g class="rod" data-rod=${name}><title>${name}</title>
      <path class="rim" stroke-width=${diameter} d=${line}></path>
      <path class="core" stroke-width=${diameter - 0.7} d=${line}></path>
    </g>`;
  })}`;
}

function rodEnd({ name, at: [x, y], diameter }: RodThrough, { front }: At): TemplateResult {
  return svg`<circle class="pin" cx=${x + front[0]} cy=${y + front[1]} r=${diameter / 2}><title>${name}</title></circle>`;
}

/** All that is drawn: x, y, width, height; y up. */
function room(view: MakeView, places: Map<number, At>): [number, number, number, number] {
  const [xs, ys]: [number[], number[]] = [[], []];
  for (const { part } of view.stack) {
    const at = places.get(part.layer);
    for (const [x, y] of part.rings[0] ?? []) {
      for (const [dx, dy] of at ? [at.back, at.front] : []) {
        xs.push(x + dx);
        ys.push(y + dy);
      }
    }
  }
  const [left, low] = [least(xs) - MARGIN, least(ys) - MARGIN];
  return [left, low, most(xs) + MARGIN - left, most(ys) + MARGIN - low];
}

const least = (numbers: number[]): number => numbers.reduce((a, b) => Math.min(a, b), Infinity);
const most = (numbers: number[]): number => numbers.reduce((a, b) => Math.max(a, b), -Infinity);

customElements.define("jackwork-stack", MakeStack);
