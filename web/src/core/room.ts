import type { TemplateResult } from "lit";
import type { Desk } from "./desk.js";

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
