import { html, type TemplateResult } from "lit";
import type { Value } from "../core/api.js";
import { fieldUnit, fieldValue, typed } from "../core/units.js";
import { nothing, type Wish } from "./wish.js";

interface RowActions {
  save(wish: Wish): Promise<boolean>;
}

const BASES: [string, string][] = [
  ["measured", "measured here"],
  ["published", "published"],
  ["guess", "guess"],
];

/** One value on a line; opened, everything about it can be changed. */
export function valueRow(value: Value, of: string, actions: RowActions): TemplateResult {
  return html`<details class="value-row" data-value=${value.path}>
    <summary>
      <span class="name">${value.name}</span>
      <span class="stands">${stands(value)}</span>
      ${rests(value)}
    </summary>
    ${value.about ? html`<p class="about">${value.about}</p>` : ""}
    <form class="fields-of-value" @submit=${(event: SubmitEvent) => save(event, value, of, actions)}>
      ${fields(value)}
      <p class="buttons">
        <button type="submit">Save</button>
        ${value.mayGo
          ? html`<button
              type="button"
              class="plain"
              @click=${() =>
                void actions.save({ ...nothing, label: `${of}: ${value.name} left open`, kind: "remove", path: value.path })}
            >
              ${value.number ? "Go back to our guess" : "Leave it open"}
            </button>`
          : ""}
      </p>
    </form>
    ${value.how && value.number && value.number.basis !== "measured"
      ? html`<p class="how">To measure it: ${value.how}.</p>`
      : ""}
  </details>`;
}

function stands(value: Value): TemplateResult {
  const { number } = value;
  if (number) {
    const unit = fieldUnit(value.unit);
    const spread = number.low === number.high ? "" : `, ${inFields(number.low, value)} to ${inFields(number.high, value)}`;
    return html`<strong>${inFields(number.value, value)}${unit && ` ${unit}`}</strong>${spread}`;
  }
  if (!value.words) return html`<em>left open</em>`;
  if (value.kind === "word" || value.kind === "yes_no") return html`<strong>${value.words}</strong>`;
  const unit = fieldUnit(value.unit);
  return html`<strong>${sizeWords(value)}${unit && ` ${unit}`}</strong>`;
}

/** What it rests on, in words. */
function rests(value: Value): TemplateResult {
  if (!value.number) return html`<span class="basis"></span>`;
  const basis = BASES.find(([id]) => id === value.number?.basis)?.[1] ?? "";
  return html`<span class="basis ${value.number.basis}">${value.written ? basis : `our ${basis}`}</span>`;
}

function fields(value: Value): TemplateResult {
  const { number } = value;
  if (!number) {
    if (value.choices.length > 0) {
      return html`<label
        >${value.name}
        <select name="value">
          ${value.choices.map((choice) => html`<option .selected=${choice === value.words}>${choice}</option>`)}
        </select></label
      >`;
    }
    const decimal = value.kind !== "word";
    return html`<label class="wide"
      >${value.name}
      <input name="value" required inputmode=${decimal ? "decimal" : "text"} .value=${decimal ? sizeWords(value) : value.words} />
      <span class="unit">${fieldUnit(value.unit)}</span></label
    >`;
  }
  const field = (name: string, words: string, now: number): TemplateResult =>
    html`<label
      >${words}
      <input name=${name} required inputmode="decimal" data-was=${inFields(now, value)} .value=${inFields(now, value)} @change=${name === "value" ? moveAlong : null} />
      <span class="unit">${fieldUnit(value.unit)}</span></label
    >`;
  return html`${field("value", "value", number.value)} ${field("low", "from", number.low)} ${field("high", "to", number.high)}
    <label
      >rests on
      <select name="basis">
        ${BASES.map(([id, words]) => html`<option value=${id} .selected=${id === number.basis}>${words}</option>`)}
      </select></label
    >
    <label class="wide">where it comes from <input name="source" .value=${number.source} /></label>
    <p class="about wide">“From” and “to” hold it 95 times in 100.</p>`;
}

/** An interval that was not touched goes along with its value. */
function moveAlong(event: Event): void {
  const field = event.target as HTMLInputElement;
  const form = field.form;
  if (!form) return;
  const by = Number(field.value.replace(",", ".")) - Number(field.dataset.was);
  const [low, high] = ["low", "high"].map((name) => form.elements.namedItem(name) as HTMLInputElement);
  if (!low || !high || !Number.isFinite(by)) return;
  for (const end of [low, high]) {
    if (end.value === end.dataset.was) end.value = String(Number((Number(end.value) + by).toFixed(4)));
  }
}

function save(event: SubmitEvent, value: Value, of: string, actions: RowActions): void {
  event.preventDefault();
  const form = event.target as HTMLFormElement;
  const data = new FormData(form);
  const word = (name: string): string => String(data.get(name) ?? "");
  const number = (name: string): string => typed(word(name), value.unit);
  const words =
    value.kind === "size"
      ? word("value")
          .split(/[,×x]/)
          .map((part) => typed(part, value.unit))
          .join(", ")
      : value.kind === "word" || value.kind === "yes_no"
        ? word("value")
        : number("value");
  const ends = value.number ? { low: number("low"), high: number("high"), basis: word("basis"), source: word("source") } : {};
  const label = `${of}: ${value.name} ${words}`;
  void actions.save({ ...nothing, label, kind: "set", path: value.path, value: words, ...ends });
}

const inFields = (number: number, value: Value): string => fieldValue(number, value.unit);

const sizeWords = (value: Value): string =>
  value.words
    .split(", ")
    .map((part) => (part === "" ? "" : inFields(Number(part), value)))
    .join(", ");
