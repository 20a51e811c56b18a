import { html, svg, type TemplateResult } from "lit";
import { type Body, designPath, type DesignView, type Finding, type Pair, type Scene, type Stop } from "../core/api.js";
import { type Dragging, spotGrip } from "./dragging.js";
import type { Lever } from "./lever.js";
import { carried, force, type Placed, placed } from "../core/motion.js";
import type { Playing } from "./playing.js";
import { sceneDrawing } from "../core/scene.js";
import { stopGrips } from "./stop-grip.js";
import { rides, type Swept, sweptRoom } from "./swept.js";
import { lengthsShown } from "../core/units.js";

/** Bare paper around the figure, mm: the handle and its arrow need as much. */
const MARGIN = 12;
/** Above it as well, mm: a coin is held there before it is let go. */
const ABOVE = 4;

const rooms = new Map<string, { view: DesignView; room: Swept }>();

/** The room of a design, kept while something in it is dragged so that the drawing does not shift. */
function room(view: DesignView, saved: DesignView): Swept {
  const known = rooms.get(view.id);
  if (known && (known.view === saved || view !== saved)) return known.room;
  const room = sweptRoom(view.scene, view.report);
  rooms.set(view.id, { view: saved, room });
  return room;
}

export interface Look {
  view: DesignView;
  saved: DesignView;
  lever: Lever;
  playing: Playing;
  dragging: Dragging;
  frontOn: boolean;
  /** Whether pivots, ends and weights can be taken. */
  changing: boolean;
  pointed: Finding | null;
}

/** Box and figure with everything that can be pulled or dragged on top. */
export function drawing(look: Look): TemplateResult {
  const { view, lever, playing } = look;
  const { minX, minY, maxX, maxY } = room(view, look.saved);
  const width = maxX - minX + 2 * MARGIN;
  const height = maxY - minY + 2 * MARGIN + ABOVE;
  const film = playing.film;
  const scene: Scene = film?.scene ?? view.scene;
  const way = view.report.motion[lever.direction];
  const place = (body: Body): Placed => (film ? playing.place(body) : placed(way, body, lever.stroke));
  return html`<svg
    class="scene"
    viewBox="${minX - MARGIN} ${-maxY - MARGIN - ABOVE} ${width} ${height}"
    @pointermove=${lever.pull}
    @pointerup=${lever.letGo}
    @pointercancel=${lever.letGo}
  >
    ${svg`
      <defs>
        <pattern id="grain" width="46" height="13" patternUnits="userSpaceOnUse">
          <path d="M0 2c12-2 20 2 46 0M0 6.5c16 1.6 26-1.4 46 0M6 10.4c10-1.2 22 1 34-.4"></path>
        </pattern>
      </defs>
      <g transform="scale(1 -1)">
        ${sceneDrawing({ scene, place, frontOn: look.frontOn, pictures: designPath(view.id, "picture"), coin: playing.coin })}
        ${slot(scene)}
        ${look.pointed ? ring(view, lever, look.pointed) : ""}
        ${film ? "" : handle(view, lever)}
        ${look.changing && !film && lever.stroke === 0 ? spots(look) : ""}
      </g>`}
  </svg>`;
}

/** Where a coin is let go: two pencil ticks above the slot. */
function slot(scene: Scene): TemplateResult {
  const { letGo, slot: opening } = scene.coinWorks;
  const half = opening.length / 2;
  return svg`<path class="slot-mark" data-slot
    d=${`M${letGo[0] - half} ${letGo[1] - 3}v6M${letGo[0] + half} ${letGo[1] - 3}v6`}></path>`;
}

/** A ring where a finding points, carried along by the body it is on. */
function ring(view: DesignView, lever: Lever, finding: Finding): TemplateResult {
  const rest = finding.where.at;
  if (!rest) return svg``;
  const body = rides(view.scene, finding);
  const way = view.report.motion[lever.direction];
  const at: Pair = body ? carried(body, placed(way, body, lever.stroke), rest) : rest;
  return svg`<g class="spot">
    <circle class="halo" cx=${at[0]} cy=${at[1]} r="7"></circle>
    <circle cx=${at[0]} cy=${at[1]} r="7"></circle>
  </g>`;
}

/** Everything that can be dragged, as small rings in the colour of the lever's. */
function spots({ view, dragging }: Look): TemplateResult {
  const { spots: points, stops } = view.changeable;
  return svg`${stops.map((stop) => arc(stop, view, dragging))}${[
    ...points.map(spotGrip),
    ...stops.flatMap((stop) => stopGrips(stop, view.scene)),
  ].map((grip) => {
    const [x, y] = dragging.at(grip);
    const { name } = grip;
    return svg`<g class="grip" data-grip=${grip.path} role="button" tabindex="0"
        aria-label=${`${name}, at ${lengthsShown([x], 1)} right, ${lengthsShown([y], 1)} up; arrow keys move it`}
        transform=${`translate(${x} ${y})`}
        @pointerdown=${(e: PointerEvent) => dragging.take(grip, e)}
        @pointermove=${(e: PointerEvent) => dragging.move(grip, e)}
        @pointerup=${(e: PointerEvent) => dragging.drop(grip, e)}
        @pointercancel=${() => dragging.cancel()}
        @keydown=${(e: KeyboardEvent) => dragging.key(grip, e)}>
      <title>${name}</title>
      <circle class="reach" r="5"></circle>
      <circle class="mark" r="2.1"></circle>
    </g>`;
  })}${named(dragging)}`;
}

/** The sector that a stop leaves, in pencil. */
function arc(stop: Stop, view: DesignView, dragging: Dragging): TemplateResult {
  const [from, to] = stopGrips(stop, view.scene).map((grip) => dragging.at(grip));
  if (!from || !to) return svg``;
  const [x, y] = stop.pin;
  const radius = Math.hypot(from[0] - x, from[1] - y);
  const wide = stop.to - stop.from > 180 ? 1 : 0;
  return svg`<path class="stop-arc" d=${`M${x} ${y}L${from[0]} ${from[1]}A${radius} ${radius} 0 ${wide} 1 ${to[0]} ${to[1]}Z`}></path>`;
}

/** The name of what is held, beside it. */
function named(dragging: Dragging): TemplateResult {
  const { held } = dragging;
  if (!held) return svg``;
  return svg`<text class="held" transform=${`translate(${held.at[0] + 5} ${held.at[1] + 4}) scale(1 -1)`}>${held.name}</text>`;
}

function handle(view: DesignView, lever: Lever): TemplateResult {
  const { press, pin, throwDeg, body: name } = view.scene.lever;
  const way = view.report.motion[lever.direction];
  const body = view.scene.bodies.find((b) => b.name === name);
  const to: Placed | null = body ? placed(way, body, lever.stroke) : null;
  const at = body && to ? carried(body, to, press) : press;
  // The arrow lies along the way that the press end travels.
  const travel = (Math.atan2(press[1] - pin[1], press[0] - pin[0]) * 180) / Math.PI + Math.sign(throwDeg) * 90;
  const percent = Math.round(lever.stroke * 100);
  const newtons = force(way, lever.stroke);
  return svg`<g class="handle" data-handle="lever" role="slider" tabindex="0"
      aria-label="Lever" aria-orientation="vertical" aria-valuemin="0" aria-valuemax="100"
      aria-valuenow=${percent}
      aria-valuetext=${`stroke ${percent} %${newtons == null ? "" : `, ${newtons.toFixed(2)} N`}`}
      transform=${`translate(${at[0]} ${at[1]})`}
      @pointerdown=${lever.take} @keydown=${lever.key}>
    <circle class="reach" r="13"></circle>
    <circle class="ring" r="5.5"></circle>
    <path class="arrow" transform=${`rotate(${travel + (to?.angle ?? 0)})`} d="M9 0h7.5M13.5 -3l3.5 3l-3.5 3"></path>
  </g>`;
}
