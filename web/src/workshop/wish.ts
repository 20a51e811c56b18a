import type { WorkshopStep } from "../core/api.js";

/** A change that is asked for, without the version that it is decided on. */
export type Wish = Omit<WorkshopStep, "base">;

/** The words of a change that it may do without. */
export const nothing = { value: "", low: "", high: "", basis: "", source: "" };
