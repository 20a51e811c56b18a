import { html, type TemplateResult } from "lit";
import type { GlueStep, MakeSheets, MakeView, Needed } from "../core/api.js";
import type { Source } from "./making.js";
import { lengthsShown, told } from "../core/units.js";

/** The glue-up, step by step. */
export function gluing(source: Source, view: MakeView): TemplateResult {
  return html`<section class="gluing" aria-labelledby="gluing-title">
    <h2 id="gluing-title">The glue-up</h2>
    <p>${view.steps.length} steps, about ${Math.round(view.glueMinutes)} min for one piece.</p>
    <ol class="step-list">
      ${view.steps.map((step, i) => glueStep(source, step, i))}
    </ol>
  </section>`;
}

function glueStep(source: Source, step: GlueStep, number: number): TemplateResult {
  const all = step.words.map(told);
  const entries = all.filter((words) => words.startsWith("- "));
  const [before, after] = split(all);
  return html`<li class="glue-step">
    <h3>${step.heading} <span class="quiet">about ${Math.max(1, Math.round(step.minutes))} min</span></h3>
    ${step.picture
      ? html`<img
          src=${source.path("glue-step", `&number=${number}`)}
          loading="lazy"
          alt=${`What goes on in this step: ${step.heading}`}
        />`
      : ""}
    ${before.map((words) => html`<p>${words}</p>`)}
    ${entries.length > 0
      ? html`<ul>
          ${entries.map((words) => html`<li>${words.slice(2)}</li>`)}
        </ul>`
      : ""}
    ${after.map((words) => html`<p>${words}</p>`)}
  </li>`;
}

/** Paragraphs before a step's list and after its first entry. */
function split(words: string[]): [string[], string[]] {
  const first = words.findIndex((one) => one.startsWith("- "));
  const plain = (some: string[]): string[] => some.filter((one) => !one.startsWith("- "));
  return first < 0 ? [words, []] : [words.slice(0, first), plain(words.slice(first))];
}

/** Every rod with its length. */
export function rods(view: MakeView, quantity: number): TemplateResult {
  return html`<section class="rods" aria-labelledby="rods-title">
    <h2 id="rods-title">Rods to cut</h2>
    <div class="wide-table" tabindex="0" role="region" aria-labelledby="rods-title">
      <table>
        <thead>
          <tr>
            <th scope="col">Dowel</th>
            <th scope="col">Rod</th>
            <th scope="col">Layers</th>
            <th scope="col" class="number">Length</th>
            <th scope="col" class="number">How many</th>
          </tr>
        </thead>
        <tbody>
          ${view.rods.map(
            (rod) => html`<tr>
              <th scope="row">${rod.name}</th>
              <td>${rod.rod}</td>
              <td>${rod.from === rod.to ? rod.from : `${rod.from} to ${rod.to}`}</td>
              <td class="number">${lengthsShown([rod.length], 1)}</td>
              <td class="number">${quantity}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  </section>`;
}

/** The bill of materials, with what is to be bought of it. */
export function needed(sheets: MakeSheets): TemplateResult {
  if (sheets.needs.length === 0) return html``;
  return html`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title">What it takes</h2>
    <div class="wide-table" tabindex="0" role="region" aria-labelledby="needs-title">
      <table>
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col" class="number">Needed</th>
            <th scope="col" class="number">To buy</th>
            <th scope="col">What for</th>
          </tr>
        </thead>
        <tbody>
          ${sheets.needs.map(
            (need) => html`<tr>
              <th scope="row">${need.item}</th>
              <td class="number">${amount(need, need.amount)}</td>
              <td class="number">${need.toBuy > 0 ? amount(need, need.toBuy) : "on the shelf"}</td>
              <td>${need.what}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  </section>`;
}

function amount({ unit }: Needed, much: number): string {
  if (unit === "mm") return lengthsShown([much]);
  return `${Number.isInteger(much) ? much : much.toFixed(1)} ${much === 1 ? unit.replace(/s$/, "") : unit}`;
}
