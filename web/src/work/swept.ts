import type { Body, Finding, Pair, Report, Scene } from "../core/api.js";
import { carried, placed } from "../core/motion.js";

/** Poses looked at for the room that a figure sweeps. */
const LOOKS = 20;
/** A point this near to an outline, mm, belongs to it: beak tips and press points lie on the edge. */
const NEAR = 1;

export interface Swept {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

/** All that the figure reaches between rest and full press, so that the drawing need never shift. */
export function sweptRoom(scene: Scene, report: Report): Swept {
  const room: Swept = { ...scene.bounds };
  for (const body of scene.bodies) {
    if (body.ground) continue;
    for (let i = 1; i <= LOOKS; i++) {
      const to = placed(report.motion.pressing, body, i / LOOKS);
      for (const ring of body.parts.flatMap((part) => part.rings.slice(0, 1))) {
        for (const corner of ring) {
          const [x, y] = carried(body, to, corner);
          room.minX = Math.min(room.minX, x);
          room.minY = Math.min(room.minY, y);
          room.maxX = Math.max(room.maxX, x);
          room.maxY = Math.max(room.maxY, y);
        }
      }
    }
  }
  return room;
}

const ridden = new WeakMap<Scene, Map<string, Body | null>>();

/**
 * The body that a finding's point rides on: the one of the part it names when the point lies there, else
 * the frontmost moving one that has it, else none. Looked for once: curves ask at every stroke.
 */
export function rides(scene: Scene, finding: Finding): Body | null {
  const { at, part } = finding.where;
  if (!at) return null;
  let known = ridden.get(scene);
  if (!known) ridden.set(scene, (known = new Map()));
  const key = `${part} ${at}`;
  let body = known.get(key);
  if (body === undefined) known.set(key, (body = found(scene, finding, at)));
  return body;
}

function found(scene: Scene, finding: Finding, at: Pair): Body | null {
  const over = scene.bodies
    .filter((body) => !body.ground)
    .flatMap((body) => body.parts.map((part) => ({ body, part })))
    .filter(({ part }) => touches(part.rings[0] ?? [], at))
    .sort((a, b) => b.part.layer - a.part.layer);
  const named = over.find(({ body, part }) => part.name === finding.where.part || body.name === finding.where.part);
  return (named ?? over[0])?.body ?? null;
}

/** Whether a closed ring has a point inside or near its edge. */
function touches(ring: Pair[], [x, y]: Pair): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [ax, ay] = ring[j] ?? [0, 0];
    const [bx, by] = ring[i] ?? [0, 0];
    const [dx, dy] = [bx - ax, by - ay];
    const along = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
    if (Math.hypot(x - ax - along * dx, y - ay - along * dy) <= NEAR) return true;
    if (ay > y !== by > y && x < ax + ((y - ay) / dy) * dx) inside = !inside;
  }
  return inside;
}
