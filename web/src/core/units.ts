import type { Sentence } from "./api.js";

/** How lengths are shown; files and server always speak millimetres. */
export type Lengths = "mm" | "in";

const KEY = "jackwork-lengths";
const MM_PER_INCH = 25.4;

let lengths: Lengths = localStorage.getItem(KEY) === "in" ? "in" : "mm";

export const shownIn = (): Lengths => lengths;

export function showIn(next: Lengths): void {
  lengths = next;
  localStorage.setItem(KEY, next);
}

/** A sentence of the server's with its lengths as they are to be shown. */
export const told = ({ pieces }: Sentence): string =>
  pieces.map(({ words, inches }) => (lengths === "in" ? (inches ?? words) : words)).join("");

/** Text of our own where a sentence is expected. */
export const asSentence = (words: string): Sentence => ({ pieces: [{ words, inches: null, value: null, unit: null }] });

const inches = (mm: number): string => trimmed((mm / MM_PER_INCH).toFixed(3));

const trimmed = (number: string): string => number.replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, "");

/** A number for a field. */
export function fieldValue(value: number, unit: string): string {
  return unit === "mm" && lengths === "in" ? inches(value) : trimmed(value.toFixed(3));
}

/** Lengths in the unit shown, one unit for all of them: "292 × 180 mm". */
export function lengthsShown(mm: number[], places = 0): string {
  const shown = mm.map((length) => (lengths === "in" ? (length / MM_PER_INCH).toFixed(places + 2) : length.toFixed(places)));
  return `${shown.map((text) => (text.includes(".") ? trimmed(text) : text)).join(" × ")} ${lengths}`;
}

/** What was typed as a length, mm: "1.87", "0.075 in", "1/8 in"; a bare number is in the unit shown. Null when it is none. */
export function lengthTyped(text: string): number | null {
  const read = /^\s*(\d*[.,]?\d+)(?:\s*\/\s*(\d+))?\s*(mm|in|")?\s*$/.exec(text);
  if (!read) return null;
  const number = Number((read[1] ?? "").replace(",", ".")) / Number(read[2] ?? 1);
  const unit = read[3] ?? lengths;
  const mm = unit === "mm" ? number : number * MM_PER_INCH;
  return Number.isFinite(mm) ? mm : null;
}

export function fieldUnit(unit: string): string {
  if (unit === "mm") return lengths;
  if (unit === "deg") return "°";
  return unit === "1" ? "" : unit;
}

/** What was typed into a field, as the file writes it: a bare number is in the unit shown. */
export function typed(text: string, unit: string): string {
  const bare = text.trim().replace(",", ".");
  return unit === "mm" && lengths === "in" && /^[+-]?[\d./]+$/.test(bare) ? `${bare} in` : bare;
}
