import { html, svg, type TemplateResult } from "lit";

/** Kinds of filling, told apart without colour: plain wood, hatched, dotted, crossed, open. */
export type Filling = "wood" | "hatched" | "dotted" | "crossed" | "open";

/** A stretch of a bar, as shares of its whole length. */
export interface Stretch {
  from: number;
  to: number;
  filling: Filling;
}

const percent = (share: number): string => `${(100 * Math.min(1, Math.max(0, share))).toFixed(2)}%`;

/** The patterns that bars are filled with; once on a page. */
export const fillings: TemplateResult = html`<svg class="fillings" width="0" height="0" aria-hidden="true">
  <defs>
    <pattern id="pay-hatched" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path d="M0 0V6"></path>
    </pattern>
    <pattern id="pay-dotted" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1.3"></circle></pattern>
    <pattern id="pay-crossed" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path d="M0 0V7M0 0H7"></path>
    </pattern>
  </defs>
</svg>`;

/** Stretches beside each other, in an svg that is as wide as it may be. */
export const stretches = (parts: Stretch[], y: number, height: number): TemplateResult[] =>
  parts
    .filter(({ from, to }) => from !== to)
    .map(({ from, to, filling }) => {
      const [left, right] = from < to ? [from, to] : [to, from];
      return svg`<rect class="stretch ${filling}" x=${percent(left)} y=${y} width=${percent(right - left)} height=${height}></rect>` as TemplateResult;
    });

/** A single bar; what it says stands beside it as text. */
export const bar = (parts: Stretch[], marks: number[] = []): TemplateResult =>
  html`<svg class="bar" width="100%" height="16" aria-hidden="true">
    ${stretches(parts, 2, 12)}
    ${marks.map((mark) => svg`<line class="mark" x1=${percent(mark)} x2=${percent(mark)} y1="0" y2="16"></line>`)}
  </svg>`;

export const at = percent;
