import { html, type TemplateResult } from "lit";
import type { FieldValue, WorkshopView } from "../core/api.js";
import { fieldUnit, typed } from "../core/units.js";
import { nothing, type Wish } from "./wish.js";

interface Field {
  name: string;
  words: string;
  unit?: string;
  choices?: string[];
  example?: string;
}

interface Form {
  button: string;
  fields: Field[];
  path(word: (name: string) => string): string;
  /** Its fields as the file names them. */
  value(word: (name: string) => string): FieldValue;
}

interface AddingActions {
  isOpen: boolean;
  open(): void;
  close(): void;
  add(wish: Wish): void;
}

/** A form for what the maker may add to a section; nothing where there is nothing to add. */
export function addingTo(view: WorkshopView, section: string, actions: AddingActions): TemplateResult {
  const form = FORMS[section]?.(view);
  if (!form) return html``;
  if (!actions.isOpen) {
    return html`<p>
      <button type="button" class="plain add" data-add=${section} @click=${actions.open}>${form.button}</button>
    </p>`;
  }
  const submit = (event: SubmitEvent): void => {
    event.preventDefault();
    const data = new FormData(event.target as HTMLFormElement);
    const word = (name: string): string => {
      const unit = form.fields.find((field) => field.name === name)?.unit;
      const text = String(data.get(name) ?? "").trim();
      return unit === undefined ? text : typed(text, unit);
    };
    const path = form.path(word);
    const friction = section === "friction";
    const spread = friction ? { low: word("low"), high: word("high"), basis: "measured", source: word("source") } : {};
    actions.add({ ...nothing, label: `${form.button}: ${path}`, kind: "add", path, value: form.value(word), ...spread });
  };
  return html`<form class="adding" @submit=${submit}>
    ${form.fields.map(fieldOf)}
    <p class="buttons">
      <button type="submit">Add it</button>
      <button type="button" class="plain" @click=${actions.close}>Leave it</button>
    </p>
  </form>`;
}

const fieldOf = (field: Field): TemplateResult =>
  field.choices && field.choices.length > 0
    ? html`<label
        >${field.words}
        <select name=${field.name}>
          ${field.choices.map((choice) => html`<option>${choice}</option>`)}
        </select></label
      >`
    : html`<label
        >${field.words}${field.unit && fieldUnit(field.unit) ? `, ${fieldUnit(field.unit)}` : ""}
        <input
          name=${field.name}
          required
          placeholder=${field.example ?? ""}
          inputmode=${field.unit === undefined ? "text" : "decimal"}
      /></label>`;

const name = (example: string): Field => ({ name: "name", words: "name", example });

/** The kinds that the catalogue knows, as another entry of the section offers them. */
function kinds(view: WorkshopView, section: string): string[] {
  const groups = view.sections.find(({ id }) => id === section)?.groups ?? [];
  return groups.flatMap((group) => group.values).find((value) => value.path.endsWith(".kind"))?.choices ?? [];
}

const CHANNELS: Record<string, FieldValue> = {
  outright: { markup: "90 %" },
  commission: { share: "38 %" },
  web: { postage: 6.5 },
  fair: { stall: 55 },
};

const FORMS: Record<string, (view: WorkshopView) => Form> = {
  sheets: (view) => ({
    button: "Add a sheet",
    fields: [
      name("poplar-4"),
      { name: "kind", words: "kind", choices: kinds(view, "sheets") },
      { name: "thickness", words: "thickness", unit: "mm" },
      { name: "width", words: "width", unit: "mm" },
      { name: "height", words: "height", unit: "mm" },
    ],
    path: (word) => `sheets.${word("name")}`,
    value: (word) => ({ kind: word("kind"), thickness: word("thickness"), size: [word("width"), word("height")] }),
  }),
  rods: (view) => ({
    button: "Add a rod",
    fields: [name("bamboo-4"), { name: "kind", words: "kind", choices: kinds(view, "rods") }, { name: "diameter", words: "diameter", unit: "mm" }],
    path: (word) => `rods.${word("name")}`,
    value: (word) => ({ kind: word("kind"), diameter: word("diameter") }),
  }),
  cords: () => ({
    button: "Add a cord",
    fields: [name("fishing-line"), { name: "diameter", words: "diameter", unit: "mm" }, { name: "holds", words: "holds a pull of", unit: "N" }],
    path: (word) => `cords.${word("name")}`,
    value: (word) => ({ diameter: word("diameter"), holds: word("holds") }),
  }),
  friction: () => ({
    button: "Add two materials",
    fields: [
      { name: "a", words: "this", example: "brass" },
      { name: "b", words: "on that", example: "bamboo" },
      { name: "value", words: "coefficient", unit: "1" },
      { name: "low", words: "from", unit: "1" },
      { name: "high", words: "to", unit: "1" },
      { name: "source", words: "how it was measured", example: "tilted until it slid, five times" },
    ],
    path: (word) => `friction.${word("a")},${word("b")}`,
    value: (word) => word("value"),
  }),
  shelf: () => ({
    button: "Add something",
    fields: [{ ...name("bamboo-3"), words: "as the shopping list calls it" }, { name: "amount", words: "how much, in its unit", unit: "1" }],
    path: (word) => `have.${word("name")}`,
    value: (word) => word("amount"),
  }),
  laser: () => ({
    button: "Say how a line is drawn",
    fields: [
      { name: "name", words: "lines", choices: ["engrave", "inside", "outside", "marks"] },
      { name: "colour", words: "colour", example: "#204080" },
      { name: "width", words: "width", unit: "mm" },
    ],
    path: (word) => `laser.lines.${word("name")}`,
    value: (word) => ({ colour: word("colour"), width: word("width") }),
  }),
  prices: () => ({
    button: "Add a price",
    fields: [
      { ...name("birch-3"), words: "as the bill calls it" },
      { name: "price", words: "price as paid", unit: "1" },
      { name: "holds", words: "how much of it, in the bill's unit", unit: "1" },
    ],
    path: (word) => `pay.prices.${word("name")}`,
    value: (word) => ({ price: word("price"), holds: word("holds") }),
  }),
  channels: () => ({
    button: "Add a way to the buyer",
    fields: [{ name: "kind", words: "kind", choices: Object.keys(CHANNELS) }, name("mill-shop")],
    path: (word) => `pay.channels.${word("kind")}.${word("name")}`,
    value: (word) => CHANNELS[word("kind")] ?? {},
  }),
  bands: (view) => ({
    button: "Add a band",
    fields: [{ ...name("a present"), words: "people call it" }, { name: "to", words: "and pay up to", unit: "1" }],
    path: () => `pay.bands.${view.sections.find(({ id }) => id === "bands")?.groups.length ?? 0}`,
    value: (word) => ({ name: word("name"), to: word("to") }),
  }),
};
