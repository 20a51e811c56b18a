import { html, type TemplateResult } from "lit";
import type { Basis, KnownNumber, PriceReport } from "../core/api.js";
import { called, ends, known, money, SIGNS, withUnit } from "./words.js";

const WORDS: Record<Basis, string> = { "measured here": "Measured here", published: "Published", guess: "Guesses" };

/** What the answer rests on: how much of it is measured, published, guessed; and the guess to be replaced first. */
export function restsOn(report: PriceReport): TemplateResult {
  const by = (basis: Basis): KnownNumber[] => report.numbers.filter(({ number }) => number.basis === basis);
  return html`<h3>What it rests on</h3>
    <p class="rests-count">
      ${report.guesses} of ${report.numbers.length} numbers are guesses, ${by("published").length} published,
      ${by("measured here").length} measured here.
    </p>
    <p class="matters-most">${first(report)}</p>
    <details>
      <summary>All numbers</summary>
      ${(["measured here", "published", "guess"] as const).map((basis) => list(by(basis), basis, report))}
    </details>
    <details>
      <summary>Be careful</summary>
      ${report.cautions.map((caution) => html`<p class="small">${caution}</p>`)}
    </details>`;
}

/** The guess that moves the cost most. */
function first(report: PriceReport): string {
  const swing = report.sensitivity[0]?.swings.find(({ number }) => number.basis === "guess");
  if (!swing) return "No guess moves what a piece costs.";
  const what = known(report, swing.name)?.what;
  return (
    `The guess that matters most: ${called(swing.name)}${what ? ` (${what})` : ""}. From ${ends(swing.number, report.currency)} ` +
    `the cost goes from ${money(swing.atLow)} to ${money(swing.atHigh)} ${report.currency}.`
  );
}

function list(numbers: KnownNumber[], basis: Basis, report: PriceReport): TemplateResult {
  if (numbers.length === 0) return html``;
  return html`<h4>${WORDS[basis]}, ${numbers.length}</h4>
    <ul class="small numbers" data-basis=${SIGNS[basis]}>
      ${numbers.map(
        ({ name, what, number }) =>
          html`<li>${called(name)}: ${withUnit(number.value, number.unit, report.currency)}${what ? ` (${what})` : ""}; ${number.source}</li>`,
      )}
    </ul>`;
}
