import { html, svg, type TemplateResult } from "lit";
import type { DesignView, Finding, Pair } from "./api.js";
import type { Lever } from "./lever.js";
import { carried, force, placed, type Placed } from "./motion.js";
import { rides, type Swept, sweptRoom } from "./swept.js";
import { sceneDrawing } from "./scene.js";

/** Bare paper around the figure, mm: the handle and its arrow need as much. */
const MARGIN = 12;

const rooms = new WeakMap<DesignView, Swept>();

function room(view: DesignView): Swept {
  let room = rooms.get(view);
  if (!room) {
    room = sweptRoom(view.scene, view.report);
    rooms.set(view, room);
  }
  return room;
}

/** Box and figure with the lever's handle on top. */
export function drawing(
  view: DesignView,
  lever: Lever,
  frontOn: boolean,
  pointed: Finding | null,
): TemplateResult {
  const { minX, minY, maxX, maxY } = room(view);
  const width = maxX - minX + 2 * MARGIN;
  const height = maxY - minY + 2 * MARGIN;
  const way = view.report.motion[lever.direction];
  return html`<svg
    class="scene"
    viewBox="${minX - MARGIN} ${-maxY - MARGIN} ${width} ${height}"
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
        ${sceneDrawing({ scene: view.scene, way, stroke: lever.stroke, frontOn })}
        ${pointed ? ring(view, lever, pointed) : ""}
        ${handle(view, lever)}
      </g>`}
  </svg>`;
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
