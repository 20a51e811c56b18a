import type { Interval, MoneySum, ScoreView, ValueView } from "../core/api.js";
import { fieldUnit, fieldValue, lengthTyped } from "../core/units.js";

/** The bench's numbers in words. */

export const percent = (share: number, places = 0): string => `${trimmed(100 * share, places)}\u00a0%`;

const trimmed = (value: number, places: number): string => String(Number(value.toFixed(places)));

/** An interval's ends; near the edges one place more, so that 99.6 does not read as 100. */
export function between({ low, high }: Interval): string {
  const end = (share: number): string =>
    trimmed(100 * share, share > 0 && share < 1 && (share < 0.01 || share > 0.99) ? 1 : 0);
  return `between ${end(low)} and ${end(high)}\u00a0%`;
}

export function scoreWords(score: ScoreView): string {
  if (score.rate === null) return "not tried yet";
  return `${score.passes} of ${score.tries} passed, ${percent(score.rate, 1)}; the true share lies ${between(score.interval95)}, as such a range does 95 times in 100`;
}

/** A moment as this place's day. */
export function day(at: string): string {
  return new Date(at).toLocaleDateString(undefined, { day: "numeric", month: "short", year: "numeric" });
}

export function clock(at: string): string {
  return new Date(at).toLocaleTimeString(undefined, { hour: "2-digit", minute: "2-digit" });
}

export const sums = (all: MoneySum[]): string =>
  all.length === 0 ? "nothing" : all.map(({ amount, currency }) => `${amount} ${currency}`).join(" and ");

export function valueWords({ value, low, high, unit }: ValueView): string {
  const number = (n: number): string => (unit === "mm" ? fieldValue(n, unit) : trimmed(n, 3));
  return `${number(value)} ${fieldUnit(unit)}`.trim() + `, between ${number(low)} and ${number(high)}`;
}

/** What was measured, and how; the log knows it by its place in workshop.yaml. */
export function thingWords({ kind, about }: { kind: string; about: string }): string {
  switch (kind) {
    case "friction":
      return `friction of ${about.replace(",", " on ")}, by tilting`;
    case "bucket":
      return `friction of ${about.replace(",", " on ")}, by a bucket's weights`;
    case "kerf":
      return "kerf of the laser, by strips";
    case "sheet":
      return `thickness of ${about}, by calliper`;
    default:
      return `diameter of ${about}, by calliper`;
  }
}

/** A number as typed, with a comma or a point. */
export const plain = (text: string): string => text.trim().replace(",", ".");

/** Several, apart by blanks or semicolons. */
export const list = (text: string): string[] =>
  text
    .split(/[\s;]+/)
    .filter((word) => word !== "")
    .map(plain);

/** A length as typed, in mm for the log; what is none as it stands, to be told so. */
export function millimetres(text: string): string {
  const mm = lengthTyped(text);
  return mm === null ? plain(text) : trimmed(mm, 4);
}
