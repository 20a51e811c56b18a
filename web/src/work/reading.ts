import { html, type TemplateResult } from "lit";
import type { DesignView } from "../core/api.js";
import type { Lever } from "./lever.js";
import { force } from "../core/motion.js";

/** What the lever does now, in words. */
export function reading(view: DesignView, lever: Lever): TemplateResult {
  const atRest = lever.stroke === 0;
  const way = atRest ? "At rest" : lever.direction === "pressing" ? "Pressing" : "Coming back";
  return html`
    <p class="reading" aria-live="off">
      <strong>${way}</strong> stroke ${Math.round(lever.stroke * 100)}\u00a0%,
      <span class="force">${forceWords(view, lever)}</span>
    </p>
    <p class="coin-in">${atRest ? "Waiting for a coin." : "A coin is in, the bucket has tipped."}</p>
    <p class="hangs" role="status">${trouble(view, lever)}</p>
  `;
}

function forceWords(view: DesignView, lever: Lever): string {
  const direction = lever.stroke === 0 ? "pressing" : lever.direction;
  const f = force(view.report.motion[direction], lever.stroke);
  if (f == null) return "held fast by friction";
  const newtons = `${Math.abs(f).toFixed(2)}\u00a0N`;
  if (direction === "pressing") return f >= 0 ? `push ${newtons}` : `it pulls ahead with ${newtons}`;
  return f >= 0 ? `it pushes back with ${newtons}` : `it must be lifted back with ${newtons}`;
}

function trouble(view: DesignView, lever: Lever): string {
  if (lever.hangs) {
    return force(view.report.motion.returning, lever.stroke) == null
      ? "It sticks here: friction holds it fast."
      : "It hangs here: its weight does not bring it back.";
  }
  return lever.reach < 1 && lever.stroke === lever.reach ? "It goes no farther." : "";
}
