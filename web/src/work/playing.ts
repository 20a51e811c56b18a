import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Body, Pair, Playback, PoseEntry } from "../core/api.js";
import type { Placed } from "../core/motion.js";

/** How many times slower than it happens. */
export type Slowness = 1 | 4 | 20;

/** A coin's visit under the hand: played at its own speed or slower, stopped, moved to any moment. */
export class Playing implements ReactiveController {
  film: Playback | null = null;
  /** s from letting go. */
  time = 0;
  running = false;
  slowness: Slowness = 1;
  private frame = 0;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    cancelAnimationFrame(this.frame);
  }

  get length(): number {
    return this.film?.times.at(-1) ?? 0;
  }

  show(film: Playback): void {
    this.film = film;
    this.time = 0;
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) this.slowness = 20;
    this.play();
  }

  takeAway(): void {
    this.pause();
    this.film = null;
    this.host.requestUpdate();
  }

  play(): void {
    if (!this.film) return;
    if (this.time >= this.length) this.time = 0;
    this.running = true;
    cancelAnimationFrame(this.frame);
    const step = (before: number, now: number): void => {
      this.time = Math.min(this.length, this.time + (now - before) / 1000 / this.slowness);
      this.running = this.time < this.length;
      this.host.requestUpdate();
      if (this.running) this.frame = requestAnimationFrame((next) => step(now, next));
    };
    this.frame = requestAnimationFrame((now) => step(now, now));
    this.host.requestUpdate();
  }

  pause(): void {
    cancelAnimationFrame(this.frame);
    this.running = false;
    this.host.requestUpdate();
  }

  goTo(time: number): void {
    this.pause();
    this.time = Math.max(0, Math.min(this.length, time));
    this.host.requestUpdate();
  }

  /** Where a body stands at this moment; at rest when the film does not speak of it. */
  place(body: Body): Placed {
    const poses = this.film?.poses[body.name];
    return (poses && this.between(poses)) ?? { x: body.centre[0], y: body.centre[1], angle: 0 };
  }

  get coin(): { at: Pair; angle: number; radius: number } | null {
    const to = this.film && this.between(this.film.coinPoses);
    return this.film && to ? { at: [to.x, to.y], angle: to.angle, radius: this.film.coinDiameter / 2 } : null;
  }

  private between(poses: PoseEntry[]): Placed | null {
    const times = this.film?.times ?? [];
    let low = 0;
    let high = times.length - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((times[middle] ?? 0) <= this.time) low = middle;
      else high = middle;
    }
    const [from, to] = [poses[low], poses[high]];
    if (!from || !to) return null;
    const [before, after] = [times[low] ?? 0, times[high] ?? 0];
    const share = after > before ? Math.min(1, Math.max(0, (this.time - before) / (after - before))) : 0;
    const mix = (a: number | null, b: number | null): number => (a ?? 0) + ((b ?? 0) - (a ?? 0)) * share;
    return { x: mix(from[0], to[0]), y: mix(from[1], to[1]), angle: mix(from[2], to[2]) };
  }
}
