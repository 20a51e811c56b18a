import type { Pair, Part, Scene } from "./api.js";

/** Places tried along each side of what parts share. */
const TRIED = 24;

/** All parts of a scene with their outer outlines, by name. */
export const partsOf = (scene: Scene): Map<string, Part> =>
  new Map(scene.bodies.flatMap((body) => body.parts).map((part) => [part.name, part]));

/** The place deepest within all of these parts; null when they share none. */
export function deepest(parts: Part[]): Pair | null {
  const rings = parts.map((part) => part.rings[0] ?? []);
  const xs = rings.map((ring) => ring.map(([x]) => x));
  const ys = rings.map((ring) => ring.map(([, y]) => y));
  const [left, right] = [Math.max(...xs.map((x) => Math.min(...x))), Math.min(...xs.map((x) => Math.max(...x)))];
  const [low, high] = [Math.max(...ys.map((y) => Math.min(...y))), Math.min(...ys.map((y) => Math.max(...y)))];
  let best: Pair | null = null;
  let depth = 0;
  for (let i = 1; i < TRIED; i++) {
    for (let k = 1; k < TRIED; k++) {
      const at: Pair = [left + ((right - left) * i) / TRIED, low + ((high - low) * k) / TRIED];
      const least = Math.min(...parts.flatMap((part) => part.rings.map((ring, n) => room(ring, at, n === 0))));
      if (least > depth) {
        best = [Math.round(at[0] * 10) / 10, Math.round(at[1] * 10) / 10];
        depth = least;
      }
    }
  }
  return best;
}

/** How far a point is on the wooden side of a ring's edge: inside the outline, outside a hole. */
function room(ring: Pair[], [x, y]: Pair, outer: boolean): number {
  let inside = false;
  let near = Infinity;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [ax, ay] = ring[j] ?? [0, 0];
    const [bx, by] = ring[i] ?? [0, 0];
    const [dx, dy] = [bx - ax, by - ay];
    const along = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
    near = Math.min(near, Math.hypot(x - ax - along * dx, y - ay - along * dy));
    if (ay > y !== by > y && x < ax + ((y - ay) / dy) * dx) inside = !inside;
  }
  return inside === outer ? near : -near;
}
