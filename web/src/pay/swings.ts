import { html, type TemplateResult } from "lit";
import type { PriceReport, Sensitivity, Swing } from "../core/api.js";
import { bar } from "./bars.js";
import { called, known, money, plain, size, SIGNS, withUnit } from "./words.js";

/** Which number moves the answer most: a bar either way for each, the largest first. */
export function swings(report: PriceReport): TemplateResult {
  return html`<h3>Which number moves it most</h3>
    <p class="small">
      Each number alone from one end of its interval to the other. Hatched: the answer at its lower end; wood: at its upper end.
    </p>
    ${report.sensitivity.slice(0, 1).map((one) => sensitivity(one, report))}
    ${report.sensitivity.slice(1).map(
      (one) => html`<details>
        <summary>${one.of}</summary>
        ${sensitivity(one, report)}
      </details>`,
    )}`;
}

function sensitivity(one: Sensitivity, report: PriceReport): TemplateResult {
  const answer = size(one.answer);
  const all = [answer, ...one.swings.flatMap(({ atLow, atHigh }) => [size(atLow), size(atHigh)])];
  const least = Math.min(...all);
  const span = Math.max(...all) - least || 1;
  const share = (amount: string): number => (size(amount) - least) / span;
  return html`<section class="sensitivity">
    <h4>${one.of}: ${money(one.answer)} ${report.currency}</h4>
    <ol>
      ${one.swings.map((swing) => row(swing, share, share(one.answer), report))}
    </ol>
  </section>`;
}

function row(swing: Swing, share: (amount: string) => number, now: number, report: PriceReport): TemplateResult {
  const { low, high, unit, basis } = swing.number;
  const what = known(report, swing.name)?.what;
  return html`<li data-swing=${swing.name}>
    <span>${called(swing.name)} <span class="basis">${SIGNS[basis]}</span>${what ? html` <span class="what">${what}</span>` : ""}</span>
    ${bar(
      [
        { from: share(swing.atLow), to: now, filling: "hatched" },
        { from: now, to: share(swing.atHigh), filling: "wood" },
      ],
      [now],
    )}
    <span class="small">
      ${money(swing.atLow)} at ${plain(low)}, ${money(swing.atHigh)} at ${withUnit(high, unit, report.currency)}
    </span>
  </li>`;
}
