import { html, type TemplateResult } from "lit";
import type { PayView, Task } from "../core/api.js";
import { many } from "../core/words.js";
import { isPlain, noWish, standing, type Wish, withNumber } from "./wish.js";
import { plain, size } from "./words.js";
import { stageWords } from "../core/stages.js";

const MOST_STEPS = 6;

interface Slider {
  id: string;
  name: string;
  value: number;
  /** As shown in the field. */
  text: string;
  most: number;
  least: number;
  step: number;
  unit: string;
  /** Whether it was put otherwise than it is. */
  moved: boolean;
  set(text: string): void;
  back(): void;
}

/** All that can be slid; the answer follows at once. `usual` is the answer to nothing asked. */
export function sliders(pay: PayView, usual: PayView, wish: Wish, take: (wish: Wish) => void): TemplateResult {
  const { report } = pay;
  const { currency } = report;
  const wage = wish.numbers["wage"] ?? size(report.hour.wage);
  return html`<section class="sliders" aria-label="What to ask">
    ${slider({
      id: "batch",
      name: "Batch",
      value: wish.quantity,
      text: String(wish.quantity),
      least: 1,
      most: 100,
      step: 1,
      unit: wish.quantity === 1 ? "piece" : "pieces",
      moved: wish.quantity !== noWish().quantity,
      set: (text) => take({ ...wish, quantity: Math.round(Number(text)) }),
      back: () => take({ ...wish, quantity: noWish().quantity }),
    })}
    ${laidOut(wish, take)}
    ${slider({
      id: "minutes",
      name: "Minutes a piece",
      value: wish.minutes || report.minutes,
      text: plain(Math.round(10 * (wish.minutes || report.minutes)) / 10),
      least: 1,
      most: Math.ceil((2 * usual.report.minutes) / 10) * 10,
      step: 1,
      unit: "min",
      moved: wish.minutes !== 0,
      set: (text) => take({ ...wish, minutes: Number(text) }),
      back: () => take({ ...wish, minutes: 0 }),
    })}
    ${slider({
      id: "wage",
      name: "Wage an hour",
      value: wage,
      text: "wage" in wish.numbers ? plain(wage) : report.hour.wage,
      least: 0,
      most: Math.max(10, Math.ceil(3 * size(usual.report.hour.wage))),
      step: 0.5,
      unit: currency,
      moved: "wage" in wish.numbers,
      set: (text) => take(withNumber(wish, "wage", Number(text))),
      back: () => take(withNumber(wish, "wage", null)),
    })}
    ${slider({
      id: "shelf",
      name: "Shelf price",
      value: size(report.asked),
      text: wish.shelf || report.asked,
      least: 1,
      most: Math.ceil(2 * Math.max(size(usual.report.asked), size(usual.report.floor))),
      step: 1,
      unit: currency,
      moved: wish.shelf !== "",
      set: (text) => take({ ...wish, shelf: text }),
      back: () => take({ ...wish, shelf: "" }),
    })}
    <label class="front"
      ><input
        type="checkbox"
        class="vat"
        .checked=${standing(pay, "vat.registered") !== 0}
        @change=${(e: Event) => take(withNumber(wish, "vat.registered", (e.target as HTMLInputElement).checked ? 1 : 0))}
      />
      registered for VAT</label
    >
    ${timed(pay, wish, take)}
    <details>
      <summary>Minutes of the slowest steps</summary>
      ${steps(usual).map((task) => stepSlider(task, wish, take))}
    </details>
    ${isPlain(wish)
      ? ""
      : html`<p><button type="button" class="plain all-back" @click=${() => take(noWish())}>Put all back</button></p>`}
  </section>`;
}

/** What the bench's log has timed stands for what is supposed, unless that is asked for. */
function timed(pay: PayView, wish: Wish, take: (wish: Wish) => void): TemplateResult {
  if (pay.timed.length === 0) return html``;
  const { unused } = pay.report;
  return html`<label class="front"
      ><input
        type="checkbox"
        class="as-timed"
        .checked=${!wish.supposed}
        @change=${(e: Event) => take({ ...wish, supposed: !(e.target as HTMLInputElement).checked })}
      />
      minutes as timed at the bench</label
    >
    <ul class="small timed-work">
      ${pay.timed.map(
        ({ operation, minutes, pieces, revision }) =>
          html`<li>
            ${stageWords(operation)}: ${plain(Math.round(10 * minutes) / 10)} min, on ${many(pieces, "piece")} of revision
            ${revision}${unused.includes(operation) ? "; no step of this piece is called so" : ""}
          </li>`,
      )}
    </ul>`;
}

/** The steps that take most when nothing is asked: their order stays while they are slid. */
const steps = (usual: PayView): Task[] =>
  usual.report.tasks.filter(({ perBatch, operation }) => !perBatch && !operation.startsWith("watch-")).slice(0, MOST_STEPS);

function stepSlider(task: Task, wish: Wish, take: (wish: Wish) => void): TemplateResult {
  const path = `times.${task.operation}`;
  const value = wish.numbers[path] ?? task.each;
  return slider({
    id: task.operation,
    name: `${task.what}, ${plain(Math.round(10 * task.count) / 10)} a piece`,
    value,
    text: plain(value),
    least: 0.1,
    most: Math.max(1, Math.ceil(3 * task.each)),
    step: 0.1,
    unit: "min each",
    moved: path in wish.numbers,
    set: (text) => take(withNumber(wish, path, Number(text))),
    back: () => take(withNumber(wish, path, null)),
  });
}

/** Sheets are laid out for one size of batch; others take as much of them a piece, until they are laid out anew. */
function laidOut(wish: Wish, take: (wish: Wish) => void): TemplateResult {
  if (wish.laidOut === wish.quantity) return html``;
  return html`<p class="small">
    Sheets and the laser's time as laid out for ${wish.laidOut}.
    <button type="button" class="plain lay-out" @click=${() => take({ ...wish, laidOut: wish.quantity })}>
      Lay out ${wish.quantity}
    </button>
  </p>`;
}

function slider(of: Slider): TemplateResult {
  const range = (e: Event): void => of.set((e.target as HTMLInputElement).value);
  const field = (e: Event): void => {
    const input = e.target as HTMLInputElement;
    const text = input.value.trim().replace(",", ".");
    if (/^\d+(\.\d+)?$/.test(text)) of.set(text);
    else input.value = of.text;
  };
  return html`<div class="slider" data-slider=${of.id}>
    <label for=${`pay-${of.id}`}>${of.name}</label>
    <span class="value">
      <input inputmode="decimal" aria-label=${`${of.name}, as a number`} .value=${of.text} @change=${field} />
      <span class="unit">${of.unit}</span>
    </span>
    <input
      type="range"
      id=${`pay-${of.id}`}
      min=${of.least}
      max=${of.most}
      step=${of.step}
      .value=${String(of.value)}
      aria-valuetext=${`${of.text} ${of.unit}`}
      @input=${range}
    />
    ${of.moved
      ? html`<button type="button" class="plain back" aria-label=${`${of.name}: as it was`} @click=${of.back}>as it was</button>`
      : html`<span></span>`}
  </div>`;
}
