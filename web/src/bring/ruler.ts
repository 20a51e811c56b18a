import { html, type TemplateResult } from "lit";
import type { Pair } from "../core/api.js";
import type { Figure } from "./model.js";
import { fieldUnit, fieldValue, lengthTyped, shownIn } from "../core/units.js";

/** A length across a drawing whose true size is asked for. */
export class Ruler {
  ends: [Pair, Pair] | null = null;

  /** Lays it across an outline. */
  across(figure: Figure, key: string, file: number): void {
    const shape = figure.files[file]?.read.shapes.find((s) => s.key === key);
    const ring = shape?.rings[0]?.map((p) => figure.moved(p, file)) ?? [];
    const first = ring[0] ?? [0, 0];
    const left = ring.reduce((a, b) => (b[0] < a[0] ? b : a), first);
    const right = ring.reduce((a, b) => (b[0] > a[0] ? b : a), first);
    const low = ring.reduce((a, b) => Math.min(a, b[1]), first[1]);
    this.ends = [
      [left[0], low],
      [right[0], low],
    ];
  }

  get length(): number {
    return this.ends ? Math.hypot(this.ends[0][0] - this.ends[1][0], this.ends[0][1] - this.ends[1][1]) : 0;
  }

  /** Lies across the same places once everything is that much larger. */
  grow(by: number): void {
    this.ends = this.ends?.map(([x, y]) => [x * by, y * by] as Pair) as [Pair, Pair];
  }
}

/** Asks how long that really is. */
export function sizePanel(figure: Figure, ruler: Ruler, resize: (wanted: number) => void): TemplateResult {
  const flaws = figure.files.flatMap((file) => file.read.flaws);
  return html`<p class="say">
      ${figure.files[0]?.read.sized ? "The file says how large it is. Is this length right?" : "How long is this really?"}
    </p>
    <label class="known"
      ><input
        class="length"
        inputmode="decimal"
        aria-label=${`True length in ${shownIn() === "mm" ? "millimetres" : "inches"}`}
        .value=${lengthShown(ruler.length)}
        @change=${(e: Event) => resize(lengthTyped((e.target as HTMLInputElement).value) ?? Number.NaN)}
      />
      ${fieldUnit("mm")}</label
    >
    <p class="quiet">Click a part to measure its width, or drag the two ends to a length that you know.</p>
    ${flaws.map((flaw) => html`<p class="complaint">${flaw.words} It is left out.</p>`)}`;
}

const lengthShown = (mm: number): string => (shownIn() === "mm" ? mm.toFixed(1) : fieldValue(mm, "mm"));
