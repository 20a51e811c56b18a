import { html, svg, type TemplateResult } from "lit";
import type { PriceReport, Purse, Swing, WayResult } from "../core/api.js";
import { at, bar, stretches } from "./bars.js";
import { called, ends, known, money, size, SIGNS } from "./words.js";

const HIGH = 70;

/** Other ways of selling beside each other: what is left, and what an hour of hands earns by each. */
export function ways(report: PriceReport): TemplateResult {
  const wage = size(report.hour.wage);
  const hours = report.ways.map(({ anHour }) => size(anHour ?? "0"));
  const least = Math.min(0, ...hours);
  const span = Math.max(wage, ...hours) - least || 1;
  const share = (amount: number): number => (amount - least) / span;
  return html`<h3>Ways of selling, side by side</h3>
    <p class="small">
      For a finished piece at ${money(report.waysPrice)} ${report.currency}. What is left is left once your hands have had the
      wage asked for. The bars: what an hour of them earns; the stroke: that wage, ${money(report.hour.wage)}.
    </p>
    <div class="ways">${report.ways.map((way) => card(way, report, share, wage))}</div>`;
}

function card(way: WayResult, report: PriceReport, share: (amount: number) => number, wage: number): TemplateResult {
  const short = size(way.left) < 0;
  const hour = size(way.anHour ?? "0");
  return html`<details class="way" data-way=${way.id}>
    <summary>
      <span class="way-name">${way.name}</span>
      <span class="left"
        ><strong>${way.left.replace("-", "")} ${report.currency}</strong> ${short ? "short" : "left"}, ${way.unit}${way.tiedUp == null
          ? ""
          : `; ${money(way.tiedUp)} tied up`}</span
      >
      ${way.anHour == null
        ? html`<span></span><span></span>`
        : html`${bar([{ from: share(0), to: share(hour), filling: hour < 0 ? "hatched" : "wood" }], [share(wage)])}
            <span class="amount">${money(way.anHour)} an hour</span>`}
    </summary>
    ${sum(way.lines, `${way.name}: the sum`)} ${way.months.length > 0 ? months(way, report) : ""}
    ${way.purses.map((purse) => other(purse, report))} ${way.words.map((words) => html`<p class="small">${words}</p>`)}
    ${way.hangsOn.length > 0 ? hangsOn(way.hangsOn, report) : ""}
  </details>`;
}

function sum(lines: { name: string; amount: string }[], caption: string): TemplateResult {
  const most = Math.max(...lines.map(({ amount }) => Math.abs(size(amount))), 1);
  return html`<table class="sum">
    <caption class="unseen">${caption}</caption>
    <tbody>
      ${lines.map(
        ({ name, amount }) => html`<tr>
          <th scope="row">${name}</th>
          <td class="drawn">
            ${bar([{ from: 0, to: Math.abs(size(amount)) / most, filling: size(amount) < 0 ? "hatched" : "wood" }])}
          </td>
          <td>${money(amount)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

/** Somebody else's purse beside the maker's. */
const other = (purse: Purse, report: PriceReport): TemplateResult =>
  html`<div class="purse">
    <p><strong>${money(purse.left)} ${report.currency}</strong> ${purse.whose.startsWith("its") ? purse.whose : `in ${purse.whose} purse`}, a month</p>
    ${sum(purse.lines, `${purse.whose}: the sum`)}
  </div>`;

/** Cash month by month: above the line it comes in, below it goes out. */
function months(way: WayResult, report: PriceReport): TemplateResult {
  const amounts = way.months.map(size);
  const most = Math.max(0, ...amounts);
  const span = most - Math.min(0, ...amounts) || 1;
  const zero = (most / span) * HIGH;
  const step = 1 / amounts.length;
  return html`<figure class="months">
    <svg width="100%" height=${HIGH + 4} role="img" aria-label="Cash by month: ${monthWords(way)}">
      ${svg`
        ${amounts.map((amount, i) => {
          const height = (Math.abs(amount) / span) * HIGH;
          const y = amount > 0 ? zero - height : zero;
          return stretches([{ from: (i + 0.15) * step, to: (i + 0.85) * step, filling: amount < 0 ? "hatched" : "wood" }], y + 2, height);
        })}
        <line class="mark" x1="0" x2=${at(1)} y1=${zero + 2} y2=${zero + 2}></line>`}
    </svg>
    <figcaption>
      Cash of the whole batch: ${monthWords(way)}.
      ${way.tiedUp == null ? "" : html`Most money tied up at once: <strong>${money(way.tiedUp)} ${report.currency}</strong>.`}
    </figcaption>
  </figure>`;
}

const monthWords = (way: WayResult): string =>
  way.months
    .map((amount, i) => (size(amount) === 0 ? "" : `${i === 0 ? "at the making" : `month ${i}`} ${money(amount)}`))
    .filter((words) => words !== "")
    .join(", ");

function hangsOn(numbers: Swing[], report: PriceReport): TemplateResult {
  return html`<p class="small hangs-on">It hangs on</p>
    <ul class="small hangs-on">
      ${numbers.map(
        ({ name, number, atLow, atHigh }) => html`<li>
          ${known(report, name)?.what ?? called(name)}, ${ends(number, report.currency)} <span class="basis">${SIGNS[number.basis]}</span>: ${money(atLow)} to
          ${money(atHigh)}
        </li>`,
      )}
    </ul>`;
}
