import { html, type TemplateResult } from "lit";
import type { DesignView, Pair, Part, FieldValue } from "../core/api.js";
import { deepest, partsOf } from "../core/inside.js";
import { fieldUnit, fieldValue, typed } from "../core/units.js";

export interface AddingActions {
  /** @param value of the new entry, its fields as the figure's file names them */
  add(name: string, value: FieldValue): void;
  close(): void;
  say(words: string): void;
}

/** A form for something new on the figure; where it goes first is worked out, then it can be dragged. */
export function adding(view: DesignView, section: string, actions: AddingActions): TemplateResult {
  const submit = (event: SubmitEvent): void => {
    event.preventDefault();
    const fields = new FormData(event.target as HTMLFormElement);
    const word = (name: string): string => String(fields.get(name) ?? "");
    const value = VALUES[section]?.(view, word);
    if (value instanceof Error) actions.say(value.message);
    else if (value) actions.add(section === "parts" ? word("outline") : word("name").trim(), value);
  };
  return html`<form class="adding" @submit=${submit}>
    ${FIELDS[section]?.(view) ?? ""}
    <p class="buttons">
      <button type="submit">Add it</button>
      <button type="button" class="plain" @click=${actions.close}>Leave it</button>
    </p>
  </form>`;
}

const choose = (name: string, words: string, options: string[]): TemplateResult =>
  html`<label
    >${words} <select name=${name}>
      ${options.map((option) => html`<option>${option}</option>`)}
    </select></label
  >`;

const named = (example: string): TemplateResult =>
  html`<label>name <input name="name" required pattern="[a-z][a-z0-9\\-]*" placeholder=${example} /></label>`;

const names = (view: DesignView): string[] => [...partsOf(view.scene).keys()];

/** Parts of the figure and the lever come first: most things are put there. */
function figureFirst(view: DesignView): string[] {
  const parts = [...partsOf(view.scene).values()];
  return [...parts.filter((part) => !part.ofBox), ...parts.filter((part) => part.ofBox)].map((part) => part.name);
}

const FIELDS: Record<string, (view: DesignView) => TemplateResult> = {
  weights: (view) => html`${named("tail-2")} ${choose("on", "on", figureFirst(view))}
    ${choose("what", "made of", ["grams", ...view.changeable.choices.fasteners])}
    <label>how many, or how many grams <input name="count" inputmode="decimal" required value="5" /></label>`,
  pins: (view) => html`${named("knee-2")} ${choose("first", "gripped by", figureFirst(view))}
    ${choose("second", "through", figureFirst(view))} ${choose("rod", "rod", view.changeable.choices.rods)}`,
  strings: (view) => html`${named("lift")} ${choose("from", "from", figureFirst(view))}
    ${choose("to", "to", names(view))} ${choose("cord", "cord", view.changeable.choices.cords)}
    <label>slack, ${fieldUnit("mm")} <input name="slack" inputmode="decimal" required value=${fieldValue(5, "mm")} /></label>`,
  parts: (view) =>
    view.changeable.outlines.length === 0
      ? html`<p>Every outline of the drawing is a part already. Draw another one in your editor and save it; it shows here.</p>`
      : html`${choose("outline", "outline", view.changeable.outlines)}
          ${choose("stock", "cut from", view.changeable.choices.sheets)}
          <label>layer <input name="layer" inputmode="numeric" required value="5" /></label>`,
};

type Words = (name: string) => string;
type Fields = Record<string, FieldValue>;

const VALUES: Record<string, (view: DesignView, word: Words) => FieldValue | Error> = {
  weights: (view, word) =>
    at(view, [word("on")], (place) => {
      const mass: Fields = word("what") === "grams" ? { mass: word("count") } : { what: word("what"), count: word("count") };
      return { on: word("on"), at: place, ...mass };
    }),
  pins: (view, word) =>
    at(view, [word("first"), word("second")], (place) => ({
      parts: [word("first"), word("second")],
      rod: word("rod"),
      at: place,
    })),
  strings: (view, word) =>
    at(view, [word("from")], (from) =>
      at(view, [word("to")], (to) => ({
        cord: word("cord"),
        from: { part: word("from"), at: from },
        to: { part: word("to"), at: to },
        slack: typed(word("slack"), "mm"),
      })),
    ),
  parts: (_, word) => ({ stock: word("stock"), layer: word("layer") }),
};

/** The middle of what the named parts share, or why there is none. */
function at(view: DesignView, parts: string[], value: (place: Pair) => FieldValue | Error): FieldValue | Error {
  const known = partsOf(view.scene);
  const place: Pair | null = deepest(parts.map((name) => known.get(name)).filter((part): part is Part => part !== undefined));
  return place ? value(place) : new Error(`${parts.join(" and ")} lie nowhere over each other, so nothing can go through both.`);
}
