import { html, type TemplateResult } from "lit";
import type { Basis, CostLine, KnownNumber, PriceReport } from "../core/api.js";
import { bar, type Filling } from "./bars.js";
import { called, ends, known, money, number, size, SIGNS } from "./words.js";

const GROUPS: Record<string, { name: string; filling: Filling }> = {
  stock: { name: "Material", filling: "wood" },
  "set-up": { name: "Set-up, shared by the batch", filling: "dotted" },
  machines: { name: "Machines", filling: "crossed" },
  hands: { name: "Hands, by stage", filling: "hatched" },
  overhead: { name: "Overhead", filling: "dotted" },
  design: { name: "Inventing it", filling: "dotted" },
  salvage: { name: "Comes back", filling: "open" },
};

const STAGES: Record<string, string> = {
  cut: "cutting",
  print: "printing",
  dress: "dressing: paint, pictures, cloth",
  build: "building",
  try: "trying",
  pack: "packing",
};

/** What a good piece costs, group by group, each bar beginning where the one above ends. */
export function cost(report: PriceReport): TemplateResult {
  const most = report.groups.reduce((sum, { amount }) => sum + Math.max(0, size(amount)), 0) || 1;
  let reached = 0;
  const groups = report.groups.map(({ group, amount }) => {
    const from = reached;
    reached += size(amount);
    return costGroup(report, group, amount, from, most);
  });
  return html`<h3>What a good piece costs</h3>
    <div class="costs">
      ${groups}
      <p class="cost-row floor-row">
        <span>Floor</span>
        ${bar([{ from: 0, to: reached / most, filling: "wood" }])}
        <span class="amount">${money(report.floor)} ${report.currency}</span>
        <span class="basis"></span>
      </p>
    </div>
    <p class="small">
      In it ${money(report.lostVat)} ${report.currency} of VAT that you do not get back. An hour of hands: ${report.hour.formula}.
    </p>
    ${yields(report)}`;
}

function costGroup(report: PriceReport, group: string, amount: string, from: number, most: number): TemplateResult {
  const lines = report.lines.filter((line) => line.group === group);
  const { name, filling } = GROUPS[group] ?? { name: group, filling: "open" };
  let reached = from;
  const inside = lines.map((line) => {
    const begins = reached;
    reached += size(line.amount);
    return costLine(report, line, begins / most, reached / most, filling);
  });
  return html`<details class="cost-group" data-group=${group} ?open=${group === "hands"}>
    <summary class="cost-row">
      <span>${name}</span>
      ${bar([{ from: from / most, to: (from + size(amount)) / most, filling }])}
      <span class="amount">${money(amount)}</span>
      <span class="basis">${weakest(lines)}</span>
    </summary>
    ${inside}
  </details>`;
}

const ORDER: Basis[] = ["measured here", "published", "guess"];

const weakest = (lines: CostLine[]): string =>
  SIGNS[ORDER[Math.max(0, ...lines.map(({ basis }) => ORDER.indexOf(basis)))] ?? "guess"];

function costLine(report: PriceReport, line: CostLine, from: number, to: number, filling: Filling): TemplateResult {
  const numbers = line.restsOn.map((path) => known(report, path)).filter((one): one is KnownNumber => one !== undefined);
  return html`<details class="cost-line">
    <summary class="cost-row">
      <span>${line.group === "hands" ? (STAGES[line.name] ?? line.name) : line.name}</span>
      ${bar([{ from, to, filling }])}
      <span class="amount">${money(line.amount)}</span>
      <span class="basis">${SIGNS[line.basis]}</span>
    </summary>
    <p class="small rests-on">
      Rests on ${numbers.map(({ name, number: one }) => `${called(name)} ${ends(one, report.currency)} (${SIGNS[one.basis]})`).join("; ")}.
    </p>
  </details>`;
}

function yields(report: PriceReport): TemplateResult {
  return html`<details>
    <summary>What is spoiled on the way, and the machines' time</summary>
    <p class="small">
      Good of what is begun, and how many are begun for one good piece:
      ${report.yields.map(({ stage, good, into }) => `${STAGES[stage]?.replace(/:.*/, "") ?? stage} ${number(100 * good, 1)} % (${number(into, 2)} begun)`).join("; ")}.
      ${report.machines.map(({ machine, minutes, hour }) => `The ${machine} runs ${number(minutes)} minutes a piece, at ${money(hour)} ${report.currency} an hour`).join("; ")}.
    </p>
  </details>`;
}

/** Paid before the first piece is begun: whole sheets, spools, bags. */
export function cash(report: PriceReport): TemplateResult {
  return html`<h3>Cash before the batch begins: ${money(report.cashTotal)} ${report.currency}</h3>
    <details>
    <summary>What to buy</summary>
    <table class="cash">
      <caption>
        Whole sheets, spools and bags for ${report.pieces} good ${report.pieces === 1 ? "piece" : "pieces"}, less what is on
        the shelf
      </caption>
      <thead>
        <tr>
          <th scope="col">item</th>
          <th scope="col">needs</th>
          <th scope="col">buy</th>
          <th scope="col">${report.currency}</th>
        </tr>
      </thead>
      <tbody>
        ${report.cash.map(
          (line) => html`<tr>
            <th scope="row">${line.item}</th>
            <td>${number(line.need, line.need < 10 ? 1 : 0)} ${line.unit}${line.have > 0 ? `, has ${number(line.have)}` : ""}</td>
            <td>${line.packs}</td>
            <td>${money(line.amount)}</td>
          </tr>`,
        )}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colspan="3">in all</th>
          <td>${money(report.cashTotal)}</td>
        </tr>
      </tfoot>
    </table>
    </details>`;
}
