import { html, svg, type TemplateResult } from "lit";
import type { Attempt, BoxView, Grounds, Pair, Scene } from "../core/api.js";
import { type Figure } from "./model.js";
import { path, placeOf } from "./sheet.js";
import { placed } from "../core/motion.js";
import { sceneDrawing } from "../core/scene.js";

const MARGIN = 12;

/** The figure in the hand: where it was taken, and the view as it was then, which stays until it is let go. */
export interface StandGrip {
  pointer: number;
  room: Scene["bounds"];
  offset: Pair;
}

/** What the last step answers to. */
export interface StandState {
  attempt: Attempt | null;
  /** 0 at rest to 1 fully pressed. */
  stroke: number;
  grip: StandGrip | null;
  take(grip: StandGrip | null): void;
  said(): void;
  pull(stroke: number): void;
  move(shift: Pair): void;
  go(about: string): void;
}

/** The figure on its box: as it would be made, or, as long as something is missing, as drawn. */
export function standing(figure: Figure, grounds: Grounds, state: StandState): TemplateResult {
  const box = grounds.boxes.find((b) => b.id === figure.box);
  const scene = state.attempt?.scene ?? null;
  // Fitted anew to a figure that is being dragged, the view would run away from under the hand.
  const room = state.grip?.room ?? bounds(figure, box, scene);
  const take = (event: PointerEvent): void => {
    const at = placeOf(event);
    if (!at || event.button !== 0) return;
    (event.currentTarget as SVGElement).setPointerCapture(event.pointerId);
    state.take({ pointer: event.pointerId, room, offset: [figure.shift[0] - at[0], figure.shift[1] - at[1]] });
  };
  const drag = (event: PointerEvent): void => {
    const at = placeOf(event);
    const { grip } = state;
    if (!at || grip?.pointer !== event.pointerId) return;
    state.move([at[0] + grip.offset[0], at[1] + grip.offset[1]]);
  };
  const letGo = (event: PointerEvent): void => {
    if (state.grip?.pointer === event.pointerId) state.take(null);
  };
  const keys = (event: KeyboardEvent): void => {
    const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (!by) return;
    event.preventDefault();
    state.move([figure.shift[0] + (by[0] ?? 0), figure.shift[1] + (by[1] ?? 0)]);
  };
  return html`<svg
    class="sheet stand"
    viewBox="${room.minX - MARGIN} ${-room.maxY - MARGIN} ${room.maxX - room.minX + 2 * MARGIN} ${room.maxY - room.minY + 2 * MARGIN}"
  >
    <defs>
      <pattern id="grain" width="46" height="13" patternUnits="userSpaceOnUse">
        <path d="M0 2c12-2 20 2 46 0M0 6.5c16 1.6 26-1.4 46 0M6 10.4c10-1.2 22 1 34-.4"></path>
      </pattern>
    </defs>
    ${svg`<g transform="scale(1 -1)">
      ${scene ? moving(scene, state) : box ? boxLines(box) : ""}
      <g class="on-box ${scene ? "made" : ""}" tabindex="0" role="group" aria-label="The figure; the arrow keys move it on its box"
        transform=${`translate(${figure.shift[0]} ${figure.shift[1]})`}
        @keydown=${keys}
        @pointerdown=${take}
        @pointermove=${drag}
        @pointerup=${letGo}
        @pointercancel=${letGo}>
        ${[...figure.parts]
          .sort((a, b) => a.layer - b.layer)
          .map((part) => svg`<path class="outline is-part" d=${path(figure.rings(part))}></path>`)}
      </g>
      ${!scene && box ? box.mounts.map((m) => svg`<circle class="mount" cx=${m.at[0]} cy=${m.at[1]} r="2"></circle>`) : ""}
    </g>`}
  </svg>`;
}

function moving(scene: Scene, state: StandState): TemplateResult {
  const way = state.attempt?.motion?.pressing;
  return svg`${sceneDrawing({
    scene,
    place: (body) => (way ? placed(way, body, state.stroke) : { x: body.centre[0], y: body.centre[1], angle: 0 }),
    frontOn: false,
    coin: null,
  })}`;
}

function boxLines(box: BoxView): TemplateResult {
  return svg`${box.parts.map(
    (part) => svg`<path class="of-box ${part.name === box.lever ? "the-lever" : ""}" d=${path(part.rings)}></path>`,
  )}`;
}

function bounds(figure: Figure, box: BoxView | undefined, scene: Scene | null): Scene["bounds"] {
  const { minX, minY, maxX, maxY } = figure.bounds;
  const [dx, dy] = figure.shift;
  let all = { minX: minX + dx, minY: minY + dy, maxX: maxX + dx, maxY: maxY + dy };
  const points = box?.parts.flatMap((part) => part.rings[0] ?? []) ?? [];
  for (const [x, y] of points) {
    all = { minX: Math.min(all.minX, x), minY: Math.min(all.minY, y), maxX: Math.max(all.maxX, x), maxY: Math.max(all.maxY, y) };
  }
  if (!scene) return all;
  const b = scene.bounds;
  return {
    minX: Math.min(all.minX, b.minX),
    minY: Math.min(all.minY, b.minY),
    maxX: Math.max(all.maxX, b.maxX),
    maxY: Math.max(all.maxY, b.maxY),
  };
}

/** Name and box, what is missing, and the lever to try. */
export function standPanel(figure: Figure, grounds: Grounds, state: StandState): TemplateResult {
  const complaints = state.attempt?.complaints ?? [];
  return html`<p class="say">Where does it stand?</p>
    <div class="panel" data-panel="stand">
    <label
      >Name
      <input
        class="title"
        .value=${figure.title}
        @change=${(e: Event) => {
          figure.title = (e.target as HTMLInputElement).value.trim();
          state.said();
        }}
    /></label>
    <label
      >Box
      <select
        class="box"
        @change=${(e: Event) => {
          figure.box = (e.target as HTMLSelectElement).value;
          figure.placed = false;
          state.said();
        }}
      >
        ${grounds.boxes.map((b) => html`<option value=${b.id} .selected=${b.id === figure.box}>${b.name}</option>`)}
      </select></label
    >
    <p class="quiet">Drag the figure on its box, or move it with the arrow keys.</p>
    ${complaints.map(
      (c) => html`<p class="complaint" role="status">
        ${c.words}
        ${c.about ? html`<button type="button" class="plain" @click=${() => state.go(c.about)}>Show ${c.about}</button>` : ""}
      </p>`,
    )}
    ${state.attempt?.scene
      ? html`<label class="press"
          >Press the lever
          <input
            type="range"
            min="0"
            max="100"
            .value=${String(Math.round(state.stroke * 100))}
            @input=${(e: Event) => state.pull(Number((e.target as HTMLInputElement).value) / 100)}
        /></label>`
      : ""}
  </div>`;
}
