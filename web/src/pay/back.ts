import { html, type TemplateResult } from "lit";
import type { Backwards, PriceReport, Task } from "../core/api.js";
import { bar } from "./bars.js";
import { money, number, size, SIGNS } from "./words.js";

/** From the price asked back to minutes and cost, and the steps that stand in the way. */
export function backwards(report: PriceReport): TemplateResult {
  const most = Math.max(report.minutes, ...report.backwards.map(({ mayTake }) => size(mayTake)), 1);
  const names = report.backwards[0]?.inTheWay ?? [];
  const steps = report.tasks.filter(({ operation }) => names.includes(operation));
  return html`<h3>Backwards from ${money(report.asked)} ${report.currency}</h3>
    <ul class="backs">
      ${report.backwards.map((back) => channel(back, report, most))}
    </ul>
    <h4>In the way</h4>
    <p class="small">
      ${steps.length} steps take ${number(100 * (report.backwards[0]?.shareInTheWay ?? 0))} % of the ${number(report.minutes)} minutes.
    </p>
    <ul class="steps-in-the-way">
      ${steps.map((task) => step(task, steps[0]?.minutes ?? 1))}
    </ul>
    <details>
      <summary>All steps, and other sizes of batch</summary>
      ${allSteps(report)} ${batches(report)}
    </details>`;
}

function channel(back: Backwards, report: PriceReport, most: number): TemplateResult {
  const may = Math.max(0, size(back.mayTake));
  const paid = Math.min(may, report.minutes);
  const words =
    size(back.mayTake) < 0
      ? "stock, machines and fees alone cost more than is left"
      : `a piece may take ${number(may)} minutes`;
  return html`<li data-back=${back.channel}>
    <p class="back-words">
      <strong>${back.channel}</strong>: ${words}; it takes ${number(report.minutes)}.
      <span class="told-by-word">${may >= report.minutes ? "✓ enough" : "✗ too little"}</span>
    </p>
    ${bar(
      [
        { from: 0, to: paid / most, filling: "wood" },
        { from: paid / most, to: report.minutes / most, filling: "hatched" },
        { from: report.minutes / most, to: Math.max(may, report.minutes) / most, filling: "open" },
      ],
      [may / most],
    )}
    <p class="small">
      You get ${money(back.net)}, of which it may cost <span class="may-cost">${money(back.mayCost)}</span>; as it is, it pays a
      wage of ${money(back.paysWage)} ${report.currency} an hour.
    </p>
  </li>`;
}

function step(task: Task, most: number): TemplateResult {
  return html`<li>
    <span>${task.what}</span>
    ${bar([{ from: 0, to: task.minutes / most, filling: "hatched" }])}
    <span class="amount">${number(task.minutes, 1)} min</span>
    <span class="basis">${SIGNS[task.basis]}</span>
  </li>`;
}

function allSteps(report: PriceReport): TemplateResult {
  return html`<table class="tasks">
    <caption>
      Minutes of hands for a good piece: what is learnt, spoiled and shared by the batch taken in
    </caption>
    <thead>
      <tr>
        <th scope="col">step</th>
        <th scope="col">how often</th>
        <th scope="col">min each</th>
        <th scope="col">min</th>
      </tr>
    </thead>
    <tbody>
      ${report.tasks.map(
        (task) => html`<tr>
          <th scope="row">${task.what} <span class="basis">${SIGNS[task.basis]}</span></th>
          <td>${number(task.count, 1)}${task.perBatch ? " a batch" : ""}</td>
          <td>${number(task.each, 2)}</td>
          <td>${number(task.minutes, 1)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function batches(report: PriceReport): TemplateResult {
  return html`<table class="batches">
    <caption>
      By the size of the batch, stock as laid out for this one; ${report.currency}
    </caption>
    <thead>
      <tr>
        <th scope="col">pieces</th>
        <th scope="col">min</th>
        <th scope="col">a piece costs</th>
        <th scope="col">cash first</th>
      </tr>
    </thead>
    <tbody>
      ${report.batches.map(
        (batch) => html`<tr class=${batch.pieces === report.pieces ? "this" : ""}>
          <th scope="row">${batch.pieces}</th>
          <td>${number(batch.minutes)}</td>
          <td>${money(batch.floor)}</td>
          <td>${money(batch.cash)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}
