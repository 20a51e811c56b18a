import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { DesignView } from "../core/api.js";
import { type Direction, reach, stopsAt } from "../core/motion.js";

/** Seconds that the lever takes to come back from a full press on the page. */
const RETURN_TIME = 1.1;
/** Stroke of one arrow key, and of one page key or arrow with shift. */
const STEP = 0.02;
const LEAP = 0.1;

/** Strokes that keys add. The lever goes down when pressed, so down is more. */
const KEYS: Record<string, number> = {
  ArrowDown: STEP,
  ArrowRight: STEP,
  ArrowUp: -STEP,
  ArrowLeft: -STEP,
  PageDown: LEAP,
  PageUp: -LEAP,
  Home: -1,
  End: 1,
};

/** The lever under the hand: how far it is pressed, which way it moves, and its way back when let go. */
export class Lever implements ReactiveController {
  stroke = 0;
  direction: Direction = "pressing";
  /** Whether it was let go and did not come back. */
  hangs = false;
  /** The farthest stroke that it can be pressed to. */
  reach = 1;

  private view: DesignView | null = null;
  /** While it is held: the pointer that holds it and the stroke that belongs to pointer angle zero. */
  private grip: { pointer: number; offset: number } | null = null;
  private frame = 0;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    cancelAnimationFrame(this.frame);
  }

  /** Puts the lever of another design into the hand, at rest. */
  fit(view: DesignView): void {
    cancelAnimationFrame(this.frame);
    this.view = view;
    this.grip = null;
    this.reach = reach(view.report);
    this.stroke = 0;
    this.direction = "pressing";
    this.hangs = false;
    this.host.requestUpdate();
  }

  /** Goes on with the same lever after something of its design was changed. */
  refit(view: DesignView): void {
    this.view = view;
    this.reach = reach(view.report);
    if (this.stroke > this.reach) this.stroke = this.reach;
  }

  moveTo(stroke: number): void {
    cancelAnimationFrame(this.frame);
    const next = Math.max(0, Math.min(this.reach, stroke));
    if (next !== this.stroke) this.direction = next > this.stroke ? "pressing" : "returning";
    this.stroke = next;
    this.hangs = false;
    this.host.requestUpdate();
  }

  readonly take = (event: PointerEvent): void => {
    const angle = this.pointerAngle(event);
    if (angle == null || !this.view) return;
    cancelAnimationFrame(this.frame);
    const handle = event.currentTarget as SVGElement;
    this.grip = { pointer: event.pointerId, offset: this.stroke - angle / this.view.scene.lever.throwDeg };
    handle.setPointerCapture(event.pointerId);
    handle.focus({ preventScroll: true });
    event.preventDefault();
  };

  readonly pull = (event: PointerEvent): void => {
    if (this.grip?.pointer !== event.pointerId || !this.view) return;
    const angle = this.pointerAngle(event);
    if (angle != null) this.moveTo(this.grip.offset + angle / this.view.scene.lever.throwDeg);
  };

  readonly letGo = (event: PointerEvent): void => {
    if (this.grip?.pointer !== event.pointerId) return;
    this.grip = null;
    this.comeBack();
  };

  readonly key = (event: KeyboardEvent): void => {
    const step = KEYS[event.key];
    if (step === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    this.moveTo(this.stroke + (event.shiftKey ? Math.sign(step) * Math.max(LEAP, Math.abs(step)) : step));
    event.preventDefault();
  };

  /**
   * Pointer angle about the lever's pin, degrees, positive anticlockwise, counted from where the lever points
   * at rest, so that a lever pointing left does not meet the jump from 180 to −180. Null when nothing is drawn.
   */
  private pointerAngle(event: PointerEvent): number | null {
    const matrix = (event.currentTarget as Element).closest<SVGSVGElement>("svg")?.getScreenCTM();
    if (!matrix || !this.view) return null;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const { pin, press } = this.view.scene.lever;
    const [px, py] = [press[0] - pin[0], press[1] - pin[1]];
    const [x, y] = [at.x - pin[0], -at.y - pin[1]];
    return (Math.atan2(px * y - py * x, px * x + py * y) * 180) / Math.PI;
  }

  /** Plays the lever back as far as its weight brings it. */
  private comeBack(): void {
    if (!this.view || this.stroke <= 0) return;
    const end = stopsAt(this.view.report.motion.returning, this.stroke);
    const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
    const step = (before: number, now: number): void => {
      this.direction = "returning";
      this.stroke = still ? end : Math.max(end, this.stroke - (now - before) / 1000 / RETURN_TIME);
      this.hangs = this.stroke === end && end > 0;
      this.host.requestUpdate();
      if (this.stroke > end) this.frame = requestAnimationFrame((next) => step(now, next));
    };
    this.frame = requestAnimationFrame((now) => step(now, now));
  }
}
