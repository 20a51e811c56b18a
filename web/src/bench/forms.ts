import { html, svg, type TemplateResult } from "lit";
import type { BenchView } from "../core/api.js";
import { list, millimetres, plain } from "./words.js";
import { shownIn } from "../core/units.js";

/** A field of a form of measuring. */
export interface Field {
  name: string;
  label: string;
  /** Several readings, apart by blanks. */
  several?: boolean;
  length?: boolean;
  value?(): string;
  choices?(view: BenchView): string[];
}

type Read = (name: string) => string;

/** A way of measuring: its picture, what to do, its fields, and what is logged of them. */
export interface MeasuringForm {
  id: string;
  title: string;
  picture: TemplateResult;
  how: string;
  fields: Field[];
  /** The kind that is logged. */
  logs: "measured" | "bucket";
  entry(read: Read, design: string): Record<string, string>;
}

const drawn = (inside: unknown): TemplateResult =>
  html`<svg class="how-picture" viewBox="0 0 120 70" aria-hidden="true">${inside}</svg>`;

const pairs = (name: string, values: string[]): string[] => values.map((value) => `${name}=${value}`);
const lengths = (text: string): string[] => list(text).map(millimetres);
const calliper = (): string => (shownIn() === "in" ? "0.0005" : "0.01");

const size = (id: "sheet" | "rod", title: string, how: string, picture: unknown): MeasuringForm => ({
  id,
  title,
  picture: drawn(picture),
  how,
  logs: "measured",
  fields: [
    { name: "about", label: id === "sheet" ? "Sheet" : "Rod", choices: ({ choices }) => (id === "sheet" ? choices.sheets : choices.rods) },
    { name: "size", label: "Readings", several: true, length: true },
    { name: "step", label: "Calliper reads to", length: true, value: calliper },
  ],
  entry: (read) => ({
    kind: id,
    about: read("about"),
    readings: [...pairs("size", lengths(read("size"))), `step=${millimetres(read("step"))}`].join(";"),
  }),
});

const JAWS = svg`<path class="pencil" d="M20 12H100M34 12V58M78 12V58M34 58l-6 -10V12M78 58l6 -10V12" />`;

export const FORMS: MeasuringForm[] = [
  {
    id: "friction",
    title: "Friction, by tilting",
    picture: drawn(svg`<path class="pencil" d="M8 62H112M8 62L104 26" />
      <path class="wood" d="M8 62L104 26l-1.4 -3.7L6.6 58.3z" />
      <ellipse class="brass" cx="66" cy="35.5" rx="10" ry="3" transform="rotate(-20.5 66 35.5)" />
      <path class="pull" d="M58 30l-14 5.2m5 -5.2l-5 5.2l7 1.2" />
      <path class="pencil" d="M34 62a26 26 0 0 0 -1.7 -9.1" />`),
    how:
      "Lay the one on the other. Lift one end slowly, without shaking, until it slides by itself; read the slope. Turn it, " +
      "use another place, and do it again: five times tell more than two.",
    logs: "measured",
    fields: [
      { name: "one", label: "What slides", choices: ({ choices }) => choices.surfaces },
      { name: "other", label: "On what", choices: ({ choices }) => choices.surfaces },
      { name: "slope", label: "Slopes, degrees", several: true },
      { name: "step", label: "Protractor reads to, degrees", value: () => "0.5" },
    ],
    entry: (read) => ({
      kind: "friction",
      about: `${read("one")},${read("other")}`,
      readings: [...pairs("slope", list(read("slope"))), `step=${plain(read("step"))}`].join(";"),
    }),
  },
  {
    id: "kerf",
    title: "Kerf, by strips",
    picture: drawn(svg`${[0, 1, 2, 3, 4].map((i) => svg`<rect class="wood" x=${16 + 16 * i} y="26" width="15.4" height="34" />`)}
      <path class="pencil" d="M16 14V22M95.4 14V22M16 18H95.4" /><path class="pull" d="M4 43h9m-4 -4l4 4l-4 4M112 43h-9m4 -4l-4 4l4 4" />`),
    how:
      "Cut a piece of known width into strips, push them together again and measure over all of them: what is missing is the " +
      "kerf, once for each strip. A hole of known width reads larger by one kerf. The pack has such a piece.",
    logs: "measured",
    fields: [
      { name: "drawn", label: "Width as drawn", length: true },
      { name: "strips", label: "Strips", value: () => "1" },
      { name: "outside", label: "Widths over the pieces", several: true, length: true },
      { name: "hole", label: "Widths in holes", several: true, length: true },
      { name: "step", label: "Calliper reads to", length: true, value: calliper },
    ],
    entry: (read) => ({
      kind: "kerf",
      about: "",
      readings: [
        `drawn=${millimetres(read("drawn"))}`,
        `strips=${plain(read("strips"))}`,
        ...pairs("outside", lengths(read("outside"))),
        ...pairs("hole", lengths(read("hole"))),
        `step=${millimetres(read("step"))}`,
      ].join(";"),
    }),
  },
  {
    id: "bucket",
    title: "Bucket, by weights",
    picture: drawn(svg`<path class="wood" d="M18 30H92V48H84V38H26V48H18z" /><circle class="brass" cx="36" cy="34" r="3.4" />
      <rect class="weight" x="70" y="18" width="14" height="12" /><path class="pull" d="M77 52v12m-4 -4l4 4l4 -4" />
      <path class="pencil" d="M36 8V24M77 8V14M36 10H77" />`),
    how:
      "Lay weights into the empty bucket, a known way from its pivot, until it just tips. Take them off little by little until it " +
      "just falls back (0 if it never does). The arm is level, from the pivot to where the weight lies. Two buckets are wanted.",
    logs: "bucket",
    fields: [
      { name: "tips", label: "Tips with, g" },
      { name: "falls-back", label: "Falls back with, g" },
      { name: "arm", label: "Arm", length: true },
      { name: "step", label: "Between weights, g", value: () => "0.1" },
    ],
    entry: (read, design) => ({
      design,
      tips: plain(read("tips")),
      "falls-back": plain(read("falls-back")),
      arm: millimetres(read("arm")),
      step: plain(read("step")),
    }),
  },
  size(
    "sheet",
    "Sheet, by calliper",
    "Measure the sheet that you cut from, at its edges and where parts were, five places or more: bought plywood is never its label.",
    svg`${JAWS}<path class="wood" d="M35 30H77V62H35z" /><path class="pencil" d="M49 30V62M63 30V62" />`,
  ),
  size(
    "rod",
    "Rod, by calliper",
    "Measure several rods, each in two places and turned: bamboo is rarely round.",
    svg`${JAWS}<circle class="wood" cx="56" cy="40" r="21" /><circle class="pencil" cx="56" cy="40" r="12" />`,
  ),
];
