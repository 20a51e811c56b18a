import type { ForPay, PayView } from "../core/api.js";
import { known } from "./words.js";

/** What is asked by hand, all else left as it is. */
export type Wish = Omit<ForPay, "version">;

/** Pieces that sheets are laid out for at first, and a batch has. */
export const USUAL_PIECES = 10;

export const noWish = (): Wish => ({ laidOut: USUAL_PIECES, quantity: USUAL_PIECES, shelf: "", minutes: 0, supposed: false, numbers: {} });

export const isPlain = (wish: Wish): boolean =>
  wish.laidOut === USUAL_PIECES &&
  wish.quantity === USUAL_PIECES &&
  wish.shelf === "" &&
  wish.minutes === 0 &&
  !wish.supposed &&
  Object.keys(wish.numbers).length === 0;

/** The same with one number put otherwise; null puts it back. */
export function withNumber(wish: Wish, path: string, value: number | null): Wish {
  const { [path]: _, ...numbers } = wish.numbers;
  return { ...wish, numbers: value === null ? numbers : { ...numbers, [path]: value } };
}

/** A number as it stands now: as asked, else the workshop's. */
export const standing = (pay: PayView, path: string): number => known(pay.report, path)?.number.value ?? 0;
