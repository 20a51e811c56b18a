import { svg, type SVGTemplateResult, html, type TemplateResult } from "lit";
import type { CoinScore, Interval } from "../core/api.js";
import { percent } from "./words.js";

const WIDE = 360;
const LEFT = 8;
const RIGHT = 352;

interface Axis {
  from: number;
  ticks: number[];
}

/** From 0, or nearer to 100 % when all that is shown lies there. */
function axis(low: number): Axis {
  if (low > 0.9) return { from: 0.9, ticks: [0.9, 0.95, 1] };
  if (low > 0.5) return { from: 0.5, ticks: [0.5, 0.75, 1] };
  return { from: 0, ticks: [0, 0.5, 1] };
}

/**
 * Success as bars with whiskers: solid what was tried, hollow what the builds say, a dashed line what is wanted. All that it
 * shows stands in words beside it.
 */
export function successPicture(score: CoinScore, wanted: number): TemplateResult {
  const { measured, predicted, builds, predicted95 } = score;
  const lows = [measured.rate === null ? 1 : measured.interval95.low, predicted95?.low ?? 1, wanted];
  const { from, ticks } = axis(Math.min(...lows));
  const at = (share: number): number => LEFT + ((RIGHT - LEFT) * (Math.max(from, share) - from)) / (1 - from);
  const rows = (measured.rate === null ? 0 : 1) + (predicted === null ? 0 : 1);
  const foot = 8 + 22 * rows;
  return html`<svg class="success" viewBox="0 0 ${WIDE} ${foot + 18}" aria-hidden="true">
    ${ticks.map(
      (tick) => svg`<path class="tick" d="M${at(tick)} 4V${foot + 3}" />
      <text x=${at(tick)} y=${foot + 15} text-anchor=${tick === 1 ? "end" : tick === from ? "start" : "middle"}>${percent(tick)}</text>`,
    )}
    ${measured.rate === null ? "" : bar(at, 6, measured.rate, measured.interval95, "tried")}
    ${predicted === null ? "" : bar(at, rows === 2 ? 28 : 6, predicted / builds, predicted95, "built")}
    <path class="wanted-rate" d="M${at(wanted)} 1V${foot + 3}" />
  </svg>`;
}

function bar(at: (share: number) => number, y: number, share: number, interval: Interval | null, kind: string): SVGTemplateResult {
  const middle = y + 7;
  return svg`<rect class=${kind} x=${LEFT} y=${y} width=${Math.max(0.5, at(share) - LEFT)} height="14" />
    ${
      interval
        ? svg`<path class="whisker-ground" d=${whisker(at, middle, interval)} /><path class="whisker" d=${whisker(at, middle, interval)} />`
        : ""
    }`;
}

const whisker = (at: (share: number) => number, y: number, { low, high }: Interval): string =>
  `M${at(low)} ${y}H${at(high)}M${at(low)} ${y - 5}v10M${at(high)} ${y - 5}v10`;

/** Two lengths beside each other; the numbers stand in words. */
export function twoBars(tried: number | null, other: number | null, most: number): TemplateResult {
  const wide = (value: number): number => Math.max(1, (100 * value) / most);
  return html`<svg class="two-bars" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
    ${tried ? svg`<rect class="tried" x="0" y="0" width=${wide(tried)} height="5" />` : ""}
    ${other ? svg`<rect class="built" x="0" y="6.5" width=${wide(other)} height="5" />` : ""}
  </svg>`;
}

const KEYS: Record<string, string> = {
  tried: "tried",
  timed: "timed",
  predicted: "predicted",
  supposed: "supposed",
  whisker: "where the true share lies",
  wanted: "wanted",
};

/** What the marks of a picture mean. */
export function pictureKey(...marks: (keyof typeof KEYS)[]): TemplateResult {
  return html`<p class="key" aria-hidden="true">
    ${marks.map((mark) => html`<span class="key-item"><span class="key-mark key-${mark}"></span> ${KEYS[mark]}</span>`)}
  </p>`;
}
