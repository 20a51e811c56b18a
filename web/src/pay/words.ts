import type { Basis, KnownNumber, PriceReport, Uncertain } from "../core/api.js";

/** Amounts come as text and stay text: the page shows them and draws by them, it adds nothing up. */
export const money = (amount: string): string => amount.replace(/^-/, "−");

/** An amount for drawing alone. */
export const size = (amount: string): number => Number(amount);

/** Minutes and counts as shown. */
export const number = (value: number, places = 0): string => value.toFixed(places).replace(/^-/, "−");

/** A number as it was written, without needless places. */
export const plain = (value: number): string => String(Number(value.toFixed(4))).replace(/^-/, "−");

/** With its unit; money in the workshop's currency. */
export function withUnit(value: number, unit: string, currency: string): string {
  if (unit === "1" || unit === "") return plain(value);
  return `${plain(value)} ${unit === "money" ? currency : unit}`;
}

/** Sections of workshop.yaml that say nothing by themselves. */
const UNSAID = new Set(["prices", "ways"]);

/** A number's path in a maker's words: `channels.web.post.postage` as "post, postage"; `times.pivot` as "minutes, pivot". */
export function called(path: string): string {
  const [first = "", ...rest] = path.split(".");
  const section = first === "times" ? ["minutes"] : UNSAID.has(first) ? [] : [first];
  const words = first === "channels" ? rest.slice(1) : [...section, ...rest];
  return words.map((word) => word.replaceAll("-", " ")).join(", ");
}

export const known = (report: PriceReport, path: string): KnownNumber | undefined =>
  report.numbers.find(({ name }) => name === path);

/** What a number rests on, short enough to stand beside it. */
export const SIGNS: Record<Basis, string> = { "measured here": "measured", published: "published", guess: "guess" };

export const ends = ({ low, high, unit }: Uncertain, currency: string): string =>
  low === high ? withUnit(high, unit, currency) : `${plain(low)} to ${withUnit(high, unit, currency)}`;

export const KINDS: Record<string, string> = {
  outright: "bought outright",
  commission: "on commission",
  web: "sent by post",
  fair: "at a fair",
};

export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1) + (/[.!?]$/.test(text) ? "" : ".");
