import type { TemplateResult } from "lit";
import { bench } from "./bench.js";
import type { Desk } from "./desk.js";
import { make } from "./make.js";
import { pay } from "./pay.js";
import { work } from "./work.js";
import { workshop } from "./workshop.js";

/** One of the places at the top. */
export interface Room {
  /** As it stands in the address. */
  id: string;
  title: string;
  /** Whether it is about one design; its chooser is shown then. */
  ofDesign: boolean;
  /** Whether it stands beside the questions, not among them. */
  aside?: boolean;
  show(desk: Desk): TemplateResult;
}

/** In the order of the questions; what is not built yet is not shown. */
export const rooms: Room[] = [work, make, pay, bench, workshop].filter((room): room is Room => room !== null);
