import type { Body, Pair, Report, Way } from "./api.js";

export type Direction = "pressing" | "returning";

/** Where a body is: centre of mass and turning since rest, degrees. */
export interface Placed {
  x: number;
  y: number;
  angle: number;
}

/** The farthest stroke that the solver reached. */
export function reach(report: Report): number {
  const way = report.motion.pressing;
  const tables = Object.values(way.parts);
  let last = way.stroke.length - 1;
  while (last > 0 && tables.some((table) => table[last]?.[0] == null)) last--;
  return way.stroke[last] ?? 0;
}

/** A body at a stroke, between the two neighbouring poses of the table. */
export function placed(way: Way, body: Body, stroke: number): Placed {
  const table = way.parts[body.name];
  const rest = { x: body.centre[0], y: body.centre[1], angle: 0 };
  if (!table) return rest;
  const at = Math.max(0, Math.min(1, stroke)) * (table.length - 1);
  const low = table[Math.floor(at)];
  const high = table[Math.min(table.length - 1, Math.floor(at) + 1)];
  if (!low || low[0] == null || low[1] == null || low[2] == null) return rest;
  const share = at - Math.floor(at);
  const next = high && high[0] != null && high[1] != null && high[2] != null ? high : low;
  const between = (a: number, b: number | null): number => a + ((b ?? a) - a) * share;
  return { x: between(low[0], next[0]), y: between(low[1], next[1]), angle: between(low[2], next[2]) };
}

/** The SVG transform that carries a body from rest to a place (y up). */
export function transform(body: Body, to: Placed): string {
  const [cx, cy] = body.centre;
  return `translate(${to.x.toFixed(4)} ${to.y.toFixed(4)}) rotate(${to.angle.toFixed(4)}) translate(${-cx} ${-cy})`;
}

/** A point of a body, given as at rest, where it stands now. */
export function carried(body: Body, to: Placed, point: Pair): Pair {
  const angle = (to.angle * Math.PI) / 180;
  const dx = point[0] - body.centre[0];
  const dy = point[1] - body.centre[1];
  return [
    to.x + dx * Math.cos(angle) - dy * Math.sin(angle),
    to.y + dx * Math.sin(angle) + dy * Math.cos(angle),
  ];
}

/** Force at a stroke, N; null where none was computed. */
export function force(way: Way, stroke: number): number | null {
  const at = Math.max(0, Math.min(1, stroke)) * (way.forceN.length - 1);
  const low = way.forceN[Math.floor(at)] ?? null;
  const high = way.forceN[Math.min(way.forceN.length - 1, Math.floor(at) + 1)] ?? null;
  if (low == null || high == null) return low;
  return low + (high - low) * (at - Math.floor(at));
}

/** Where the lever stops when let go: the first stroke on the way back whose force is not positive, else 0. */
export function stopsAt(returning: Way, from: number): number {
  const pushes = (u: number): boolean => (force(returning, u) ?? 0) > 0;
  if (!pushes(from)) return from;
  const samples = returning.stroke;
  for (let i = samples.length - 1; i >= 0; i--) {
    const low = samples[i] ?? 0;
    if (low >= from || pushes(low)) continue;
    let [hangs, moves] = [low, Math.min(from, samples[i + 1] ?? from)];
    while (moves - hangs > 1e-6) {
      const middle = (hangs + moves) / 2;
      if (pushes(middle)) moves = middle;
      else hangs = middle;
    }
    return hangs;
  }
  return 0;
}
