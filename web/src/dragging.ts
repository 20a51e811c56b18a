import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Pair, Spot } from "./api.js";
import type { Desk } from "./desk.js";
import { set } from "./merge.js";
import { placeName } from "./names.js";

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

/** A pivot, string's end or weight under the hand: shown at once, saved when let go. */
export class Dragging implements ReactiveController {
  /** The first path of what is held, and where it is now. */
  held: { path: string; at: Pair } | null = null;
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

  /** Where a spot is drawn now. */
  at(spot: Spot): Pair {
    return this.held && spot.paths.includes(this.held.path) ? this.held.at : spot.at;
  }

  take(spot: Spot, event: PointerEvent): void {
    const pointer = point(event);
    if (!pointer) return;
    const [x, y] = this.at(spot);
    this.from = { pointer: event.pointerId, offset: [x - pointer[0], y - pointer[1]] };
    this.held = { path: spot.paths[0] ?? "", at: [x, y] };
    (event.currentTarget as SVGElement).setPointerCapture(event.pointerId);
    event.preventDefault();
    event.stopPropagation();
    (event.currentTarget as SVGElement).focus({ preventScroll: true });
  }

  move(spot: Spot, event: PointerEvent): void {
    const pointer = this.from?.pointer === event.pointerId ? point(event) : null;
    if (!pointer || !this.from) return;
    this.moveTo(spot, [pointer[0] + this.from.offset[0], pointer[1] + this.from.offset[1]]);
  }

  drop(spot: Spot, event: PointerEvent): void {
    if (this.from?.pointer !== event.pointerId) return;
    this.from = null;
    this.save(spot);
  }

  key(spot: Spot, event: KeyboardEvent): void {
    if (event.key === "Escape" && this.held) {
      this.cancel();
      event.preventDefault();
    }
    const way = KEYS[event.key];
    if (!way || event.altKey || event.ctrlKey || event.metaKey) return;
    const step = event.shiftKey ? LEAP : STEP;
    const [x, y] = this.at(spot);
    this.held = { path: spot.paths[0] ?? "", at: [x, y] };
    this.moveTo(spot, [x + way[0] * step, y + way[1] * step]);
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => this.save(spot), PAUSE);
    event.preventDefault();
  }

  cancel(): void {
    clearTimeout(this.timer);
    this.held = this.from = null;
    this.desk()?.endGlimpse();
    this.host.requestUpdate();
  }

  private moveTo(spot: Spot, [x, y]: Pair): void {
    const at: Pair = [round(x), round(y)];
    if (this.held && at[0] === this.held.at[0] && at[1] === this.held.at[1]) return;
    this.held = { path: spot.paths[0] ?? "", at };
    this.desk()?.glimpse(steps(spot, at));
    this.host.requestUpdate();
  }

  private save(spot: Spot): void {
    clearTimeout(this.timer);
    const at = this.held?.at;
    const name = placeName(spot.paths[0] ?? "");
    if (!at || (at[0] === spot.at[0] && at[1] === spot.at[1])) {
      this.cancel();
      return;
    }
    void this.desk()
      ?.edit(`${name} moved`, steps(spot, at))
      .finally(() => {
        if (this.held?.at === at) this.held = null;
        this.host.requestUpdate();
      });
  }
}

const steps = (spot: Spot, at: Pair) => spot.paths.map((path) => set(path, `[${at[0]}, ${at[1]}]`));

const round = (value: number): number => Math.round(value * 20) / 20;

/** The pointer in the drawing's millimetres. */
export function point(event: PointerEvent): Pair | null {
  const matrix = (event.currentTarget as Element).closest<SVGSVGElement>("svg")?.getScreenCTM();
  if (!matrix) return null;
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return [at.x, -at.y];
}
