import { html, type TemplateResult } from "lit";
import type { MakeView, StockInHand } from "../core/api.js";
import type { Making } from "./making.js";
import { fieldUnit, fieldValue, lengthsShown, lengthTyped } from "../core/units.js";

const value = (event: Event): string => (event.target as HTMLInputElement | HTMLSelectElement).value;

/** What the maker says beforehand: how many, on which paper, and how thick the sheets in hand are. */
export function hand(making: Making, view: MakeView): TemplateResult {
  return html`<div class="hand">
    <label class="hand-row"
      ><span>How many</span>
      <input
        class="quantity"
        type="number"
        min="1"
        max=${view.mostPieces}
        .value=${String(making.wanted.quantity)}
        @input=${(event: Event) => {
          const quantity = Number(value(event));
          const fine = Number.isInteger(quantity) && quantity >= 1 && quantity <= view.mostPieces;
          (event.target as HTMLInputElement).setCustomValidity(fine ? "" : `1 to ${view.mostPieces}`);
          if (fine) making.want((wanted) => (wanted.quantity = quantity), true);
        }}
    /></label>
    <label class="hand-row"
      ><span>Paper in the printer</span>
      <select class="paper" @change=${(event: Event) => making.want((wanted) => (wanted.paper = value(event)))}>
        ${view.papers.map((paper) => html`<option value=${paper} .selected=${paper === view.paper}>${paper}</option>`)}
      </select></label
    >
    <fieldset class="in-hand">
      <legend>The sheet in hand</legend>
      <p class="quiet">
        Bought ply is never its label. Measure the very sheet you will cut: every slot and tab follows. This holds for this
        sheet alone; My workshop stays as it is.
      </p>
      ${view.stocks.map((stock) => stockField(making, stock))}
    </fieldset>
  </div>`;
}

function stockField(making: Making, stock: StockInHand): TemplateResult {
  const { measured } = making.wanted;
  const known = measured[stock.stock];
  const id = `in-hand-${stock.stock}`;
  const says = `My workshop says ${lengthsShown([stock.thickness], 2)}, ${
    stock.basis === "guess" ? "a guess" : stock.basis
  }: ${stock.source}`;
  return html`<div class="hand-row">
      <label for=${id}>${stock.stock}</label>
      <span class="value"
        ><input
          id=${id}
          class="measured"
          inputmode="decimal"
          autocomplete="off"
          data-stock=${stock.stock}
          placeholder=${fieldValue(stock.thickness, "mm")}
          aria-describedby=${`${id}-says`}
          .value=${known === undefined ? "" : fieldValue(known, "mm")}
          @change=${(event: Event) => typedIn(making, stock.stock, event)}
          @keydown=${(event: KeyboardEvent) => {
            if (event.key === "Enter") typedIn(making, stock.stock, event);
          }}
        />
        <span class="unit">${fieldUnit("mm")}</span></span
      >
    </div>
    <p class="quiet says" id=${`${id}-says`}>
      ${known === undefined ? says : `Cut for ${fieldValue(known, "mm")} ${fieldUnit("mm")}. ${says}`}
      ${known === undefined
        ? ""
        : html`<button type="button" class="plain" @click=${() => measure(making, stock.stock, null)}>go by that again</button>`}
    </p>`;
}

function typedIn(making: Making, stock: string, event: Event): void {
  const field = event.target as HTMLInputElement;
  const mm = field.value.trim() === "" ? null : lengthTyped(field.value);
  const wrong = field.value.trim() !== "" && (mm === null || mm <= 0.2 || mm >= 50);
  field.setCustomValidity(wrong ? `a thickness, ${lengthsShown([0.2], 1)} to ${lengthsShown([50])}` : "");
  if (wrong) field.reportValidity();
  else measure(making, stock, mm);
}

function measure(making: Making, stock: string, mm: number | null): void {
  if ((making.wanted.measured[stock] ?? null) === mm) return;
  making.want((wanted) => {
    const others = Object.entries(wanted.measured).filter(([name]) => name !== stock);
    wanted.measured = Object.fromEntries(mm === null ? others : [...others, [stock, mm]]);
  });
}
