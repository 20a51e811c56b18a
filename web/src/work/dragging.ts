import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Pair, Spot, Step } from "../core/api.js";
import type { Desk } from "../core/desk.js";
import { set } from "../core/merge.js";
import { placeName } from "../core/names.js";

/** Steps of arrow keys, mm; with shift. */
const STEP = 0.1;
const LEAP = 1;
/** Keys save when none was pressed for so long, ms. */
const PAUSE = 700;

const KEYS: Record<string, Pair> = {
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

/** What can be dragged: where it stands, where it may go, and what of the design that changes. */
export interface Grip {
  /** The first path that it changes. */
  path: string;
  name: string;
  at: Pair;
  /** The nearest place where it may be. */
  snap(at: Pair): Pair;
  /** One press of an arrow key away. */
  step(from: Pair, way: Pair, far: boolean): Pair;
  steps(at: Pair): Step[];
}

/** A point that goes anywhere. */
export function spotGrip(spot: Spot): Grip {
  return {
    path: spot.paths[0] ?? "",
    name: spot.paths.map(placeName).join(" and "),
    at: spot.at,
    snap: ([x, y]) => [round(x), round(y)],
    step: ([x, y], [right, up], far) => [x + right * (far ? LEAP : STEP), y + up * (far ? LEAP : STEP)],
    steps: (at) => spot.paths.map((path) => set(path, at)),
  };
}

/** A pivot, string's end, weight or stop under the hand: shown at once, saved when let go. */
export class Dragging implements ReactiveController {
  /** What is held, and where it is now. */
  held: { path: string; name: string; at: Pair } | null = null;
  private from: { pointer: number; offset: Pair } | null = null;
  private timer = 0;

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly desk: () => Desk | null,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.timer);
  }

  /** Where it is drawn now. */
  at(grip: Grip): Pair {
    return this.held?.path === grip.path ? this.held.at : grip.at;
  }

  take(grip: Grip, event: PointerEvent): void {
    const pointer = point(event);
    if (!pointer) return;
    const [x, y] = this.at(grip);
    this.from = { pointer: event.pointerId, offset: [x - pointer[0], y - pointer[1]] };
    this.held = { path: grip.path, name: grip.name, at: [x, y] };
    (event.currentTarget as SVGElement).setPointerCapture(event.pointerId);
    event.preventDefault();
    event.stopPropagation();
    (event.currentTarget as SVGElement).focus({ preventScroll: true });
  }

  move(grip: Grip, event: PointerEvent): void {
    const pointer = this.from?.pointer === event.pointerId ? point(event) : null;
    if (!pointer || !this.from) return;
    this.moveTo(grip, [pointer[0] + this.from.offset[0], pointer[1] + this.from.offset[1]]);
  }

  drop(grip: Grip, event: PointerEvent): void {
    if (this.from?.pointer !== event.pointerId) return;
    this.from = null;
    this.save(grip);
  }

  key(grip: Grip, event: KeyboardEvent): void {
    if (event.key === "Escape" && this.held) {
      this.cancel();
      event.preventDefault();
    }
    const way = KEYS[event.key];
    if (!way || event.altKey || event.ctrlKey || event.metaKey) return;
    const [x, y] = this.at(grip);
    this.held = { path: grip.path, name: grip.name, at: [x, y] };
    this.moveTo(grip, grip.step([x, y], way, event.shiftKey));
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => this.save(grip), PAUSE);
    event.preventDefault();
  }

  cancel(): void {
    clearTimeout(this.timer);
    this.held = this.from = null;
    this.desk()?.endGlimpse();
    this.host.requestUpdate();
  }

  private moveTo(grip: Grip, to: Pair): void {
    const at = grip.snap(to);
    if (this.held && at[0] === this.held.at[0] && at[1] === this.held.at[1]) return;
    this.held = { path: grip.path, name: grip.name, at };
    this.desk()?.glimpse(grip.steps(at));
    this.host.requestUpdate();
  }

  private save(grip: Grip): void {
    clearTimeout(this.timer);
    const at = this.held?.at;
    if (!at || (at[0] === grip.at[0] && at[1] === grip.at[1])) {
      this.cancel();
      return;
    }
    void this.desk()
      ?.edit(`${grip.name} moved`, grip.steps(at))
      .finally(() => {
        if (this.held?.at === at) this.held = null;
        this.host.requestUpdate();
      });
  }
}

const round = (value: number): number => Math.round(value * 20) / 20;

/** The pointer in the drawing's millimetres. */
export function point(event: PointerEvent): Pair | null {
  const matrix = (event.currentTarget as Element).closest<SVGSVGElement>("svg")?.getScreenCTM();
  if (!matrix) return null;
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return [at.x, -at.y];
}
