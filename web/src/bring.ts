import type { TemplateResult } from "lit";
import type { Desk } from "./desk.js";

/** The way to bring in a drawing, offered beside the choice of designs; null while there is none. */
export const bring: ((desk: Desk) => TemplateResult) | null = null;
