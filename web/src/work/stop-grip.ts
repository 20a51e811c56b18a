import type { Pair, Scene, Stop } from "../core/api.js";
import type { Grip } from "./dragging.js";
import { set } from "../core/merge.js";
import { placeName } from "../core/names.js";

/** How far from its pin a stop is taken hold of, mm. */
const REACH = 16;
/** Degrees. */
const FINE = 0.5;
const COARSE = 5;

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Both ends of a stop, on a circle about its pin; the part as drawn points the way from which they are counted. */
export function stopGrips(stop: Stop, scene: Scene): Grip[] {
  const body = scene.bodies.find(({ parts }) => parts.some(({ name }) => name === stop.part));
  if (!body) return [];
  const [x, y] = stop.pin;
  const drawn = degrees(Math.atan2(body.centre[1] - y, body.centre[0] - x));
  const place = (angle: number): Pair => {
    const turned = ((drawn + angle) * Math.PI) / 180;
    return [x + REACH * Math.cos(turned), y + REACH * Math.sin(turned)];
  };
  const end = (key: "from" | "to"): Grip => {
    const now = stop[key];
    /** The turning that is nearest to the present one, so that it can pass half a turn. */
    const angleAt = ([px, py]: Pair): number => {
      const bare = degrees(Math.atan2(py - y, px - x)) - drawn;
      const near = bare + 360 * Math.round((now - bare) / 360);
      const kept = key === "from" ? Math.min(near, stop.to) : Math.max(near, stop.from);
      return Math.round(kept / FINE) * FINE;
    };
    return {
      path: `${stop.path}.${key}`,
      name: `${placeName(stop.path)}, ${key === "from" ? "least" : "most"}`,
      at: place(now),
      snap: (at) => place(angleAt(at)),
      step: (from, [right, up], far) => place(angleAt(from) + (up - right) * (far ? COARSE : FINE)),
      steps: (at) => [set(`${stop.path}.${key}`, angleAt(at))],
    };
  };
  return [end("from"), end("to")];
}
