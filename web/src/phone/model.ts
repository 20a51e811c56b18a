import type { Entry } from "../core/unsent";

/** What the phone's page knows and sends. */

export interface Design {
  readonly design: string;
  readonly title: string;
  readonly revision: number;
  readonly coins: string[];
  readonly pieces: string[];
  tries: number;
  passes: number;
}

export interface Logged extends Entry {
  readonly kind: "trial" | "timing" | "strike-trial";
  readonly at: string;
  readonly [field: string]: string | number;
}

export interface Choices {
  readonly workshop: string;
  readonly designs: Design[];
  readonly causes: { cause: string; words: string }[];
  readonly operations: string[];
}
