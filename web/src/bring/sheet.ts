import { svg, html, type TemplateResult } from "lit";
import type { Pair } from "../core/api.js";
import type { Figure, PartEntry, PointEntry } from "./model.js";

const MARGIN = 0.06;

export const path = (rings: Pair[][]): string =>
  rings.map((ring) => ring.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x} ${y}`).join("") + "Z").join("");

/** What the drawing answers to in a step. */
export interface SheetState {
  part: string;
  point: string;
  /** Shown and answering: outlines for parts, circles for points. */
  points: boolean;
  /** A known length's two ends. */
  ends: [Pair, Pair] | null;
  pickShape(key: string, file: number): void;
  pickPoint(key: string): void;
  /** A bare place of the drawing, mm. */
  pickPlace: ((at: Pair) => void) | null;
  dragEnd: ((end: 0 | 1, at: Pair) => void) | null;
  dragPoint: ((key: string, at: Pair) => void) | null;
}

/** Where a pointer is on the drawing, mm, y up. */
export function placeOf(event: PointerEvent | MouseEvent): Pair | null {
  const matrix = (event.currentTarget as Element).closest<SVGSVGElement>("svg")?.getScreenCTM();
  if (!matrix) return null;
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return [at.x, -at.y];
}

/** The drawings brought in, large, to be pointed at. */
export function sheet(figure: Figure, state: SheetState): TemplateResult {
  const { minX, minY, maxX, maxY } = figure.bounds;
  const size = Math.max(maxX - minX, maxY - minY);
  const bare = size * MARGIN;
  const dot = size / 75;
  return html`<svg
    class="sheet"
    viewBox="${minX - bare} ${-maxY - bare} ${maxX - minX + 2 * bare} ${maxY - minY + 2 * bare}"
    @click=${(e: MouseEvent) => {
      const at = placeOf(e);
      if (at && state.pickPlace) state.pickPlace(at);
    }}
  >
    ${svg`<g transform="scale(1 -1)">
      ${figure.files.map((file, i) =>
        file.read.shapes.map((shape) => outline(figure, figure.partOf(shape, i), shape.key, i, state)),
      )}
      ${figure.files.map((file, i) =>
        file.read.lines.map(
          (line) => svg`<polyline class="scratch" points=${line.points.map((p) => figure.moved(p, i).join(",")).join(" ")}></polyline>`,
        ),
      )}
      ${state.points ? figure.points.map((point) => spot(figure, point, dot, state)) : ""}
      ${state.ends ? ruler(state.ends, dot, state) : ""}
    </g>`}
  </svg>`;
}

function outline(figure: Figure, part: PartEntry | undefined, key: string, file: number, state: SheetState): TemplateResult {
  const shape = figure.files[file]?.read.shapes.find((s) => s.key === key);
  if (!shape) return svg``;
  const rings = shape.rings.map((ring) => ring.map((p) => figure.moved(p, file)));
  const chosen = part !== undefined && part.key === state.part;
  const pick = (): void => state.pickShape(key, file);
  // Where places are picked, outlines let the pointer through.
  const deaf = state.pickPlace !== null;
  return svg`<path class="outline ${part ? "is-part" : ""} ${chosen ? "chosen" : ""} ${deaf ? "deaf" : ""}"
    data-shape=${key} d=${path(rings)} fill=${(part?.painted && shape.paint) || ""}
    role="button" tabindex=${deaf ? -1 : 0} aria-pressed=${chosen ? "true" : "false"}
    aria-label=${part ? part.name : "an outline, not a part"}
    @click=${(e: Event) => {
      if (deaf) return;
      e.stopPropagation();
      pick();
    }}
    @keydown=${(e: KeyboardEvent) => pressed(e, pick)}></path>`;
}

function pressed(event: KeyboardEvent, act: () => void): void {
  if (event.key !== "Enter" && event.key !== " ") return;
  event.preventDefault();
  act();
}

function spot(_: Figure, point: PointEntry, dot: number, state: SheetState): TemplateResult {
  const chosen = point.key === state.point;
  const pick = (): void => state.pickPoint(point.key);
  const move = (event: PointerEvent): void => {
    const held = (event.currentTarget as Element).hasPointerCapture(event.pointerId);
    const at = placeOf(event);
    if (held && at && point.own) state.dragPoint?.(point.key, at);
  };
  return svg`<g class="spot-point role-${point.role} ${chosen ? "chosen" : ""} ${point.own ? "own" : ""}" data-point=${point.name}
    role="button" tabindex="0" aria-pressed=${chosen ? "true" : "false"} aria-label=${`${point.name}, ${point.role}`}
    @click=${(e: Event) => {
      e.stopPropagation();
      pick();
    }}
    @keydown=${(e: KeyboardEvent) => pressed(e, pick)}
    @pointerdown=${(e: PointerEvent) => point.own && (e.currentTarget as Element).setPointerCapture(e.pointerId)}
    @pointermove=${move}>
    <circle class="reach" cx=${point.at[0]} cy=${point.at[1]} r=${dot * 1.7}></circle>
    <circle class="mark" cx=${point.at[0]} cy=${point.at[1]} r=${Math.max(dot * 0.75, point.radius)}></circle>
  </g>`;
}

function ruler([a, b]: [Pair, Pair], dot: number, state: SheetState): TemplateResult {
  const end = (at: Pair, which: 0 | 1): TemplateResult => svg`<g class="grip"
    @click=${(e: Event) => e.stopPropagation()}
    @pointerdown=${(e: PointerEvent) => (e.currentTarget as Element).setPointerCapture(e.pointerId)}
    @pointermove=${(e: PointerEvent) => {
      const to = placeOf(e);
      if (to && (e.currentTarget as Element).hasPointerCapture(e.pointerId)) state.dragEnd?.(which, to);
    }}>
    <circle class="reach" cx=${at[0]} cy=${at[1]} r=${dot * 2}></circle>
    <circle class="end" cx=${at[0]} cy=${at[1]} r=${dot * 0.7}></circle>
  </g>`;
  return svg`<line class="ruler" x1=${a[0]} y1=${a[1]} x2=${b[0]} y2=${b[1]}></line>${end(a, 0)}${end(b, 1)}`;
}
