import { html, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Finding, Ground, Remedy, Report, Sentence, Status } from "./api.js";
import { fieldUnit, fieldValue, told } from "./units.js";

const MARK: Record<Status, string> = { pass: "✓", open: "○", doubtful: "?", fail: "✗" };

export interface FindingActions {
  show(finding: Finding): void;
  leave(): void;
  go(finding: Finding): void;
  /** Looks for a number that settles it. */
  look(finding: Finding): void;
  apply(finding: Finding, remedy: Remedy): void;
  /** What was found for it: a remedy, or that one is being looked for. */
  found(finding: Finding): Remedy | "looking" | null;
  mendable(finding: Finding): boolean;
}

const VERDICT: Record<Report["verdict"], string> = {
  works: "Nothing found against it.",
  doubtful: "It works, but not for certain.",
  fails: "It fails.",
};

/** The verdict, and what it hangs on. A glimpse knows no spread: it says nothing of that. */
export function verdict(report: Report, glimpse: boolean): TemplateResult {
  const { words, measureFirst, guesses } = report.hangsOn;
  return html`<h2 class="verdict ${report.verdict}" role="status">${VERDICT[report.verdict]}</h2>
    ${leftOut(report)}
    ${glimpse
      ? ""
      : html`<div class="hangs-on">
          <p>${words}</p>
          ${measureFirst ? html`<p class="remedy">${measureFirst}</p>` : ""}
          ${guesses.length > 1
            ? html`<details>
                <summary>The guesses behind it</summary>
                <ul>
                  ${guesses.map(
                    (guess) => html`<li>${guess.name}, ${Math.round(guess.share * 100)} %: ${guess.finding}</li>`,
                  )}
                </ul>
              </details>`
            : ""}
        </div>`}`;
}

/** One step away from every verdict. */
function leftOut(report: Report): TemplateResult {
  return html`<details class="left-out">
    <summary>What is not in the model</summary>
    <ul>
      ${report.leftOut.map(({ what, instead }) => html`<li>${what} <span class="remedy">${instead}</span></li>`)}
    </ul>
  </details>`;
}

const id = (finding: Finding): string => finding.id;

/** What fails or is doubtful, worst first, laid open. */
export function troubles(report: Pick<Report, "findings">, actions: FindingActions): TemplateResult {
  return html`${repeat(
    report.findings.filter((f) => f.status !== "pass"),
    id,
    (f) => open(f, actions),
  )}`;
}

/** What passes, a line each. */
export function passes(report: Pick<Report, "findings">, actions: FindingActions): TemplateResult {
  const fine = report.findings.filter((f) => f.status === "pass");
  return html`
    ${fine.length === 0 ? "" : html`<h3>Passed, ${fine.length}</h3>`}
    ${repeat(fine, id, (f) => folded(f, actions))}
  `;
}

function open(finding: Finding, actions: FindingActions): TemplateResult {
  return html`<article
    class="finding ${finding.status}"
    data-finding=${finding.id}
    @mouseenter=${() => actions.show(finding)}
    @mouseleave=${actions.leave}
    @focusin=${() => actions.show(finding)}
    @focusout=${actions.leave}
  >
    <div class="row">${row(finding)}</div>
    <p>${sentence(finding.worded.why)}</p>
    ${finding.remedy ? html`<p class="remedy">${told(finding.worded.remedy)}</p>` : ""}
    ${mending(finding, actions)}
    <div class="more">
      ${goButton(finding, actions)}
      <details>
        <summary>How it was worked out</summary>
        ${workings(finding)}
      </details>
    </div>
  </article>`;
}

/** Where one number may settle it: look for it, then apply what was found. */
function mending(finding: Finding, actions: FindingActions): TemplateResult {
  if (!actions.mendable(finding)) return html``;
  const found = actions.found(finding);
  if (found === null) {
    return html`<p class="mending">
      <button type="button" class="look" @click=${() => actions.look(finding)}>Find a number that settles it</button>
    </p>`;
  }
  if (found === "looking") return html`<p class="mending waiting" role="status">Trying numbers …</p>`;
  return html`<p class="mending" role="status">
    ${sentence(found.words)}
    ${found.steps.length > 0
      ? html`<button type="button" class="apply" @click=${() => actions.apply(finding, found)}>Apply</button>`
      : ""}
  </p>`;
}

function folded(finding: Finding, actions: FindingActions): TemplateResult {
  return html`<details
    class="finding ${finding.status}"
    data-finding=${finding.id}
    @mouseenter=${() => actions.show(finding)}
    @mouseleave=${actions.leave}
    @focusin=${() => actions.show(finding)}
    @focusout=${actions.leave}
  >
    <summary class="row">${row(finding)}</summary>
    <p>${sentence(finding.worded.why)}</p>
    ${workings(finding)}
    <div class="more">${goButton(finding, actions)}</div>
  </details>`;
}

function row(finding: Finding): TemplateResult {
  return html`
    <span class="mark" aria-hidden="true">${MARK[finding.status]}</span>
    <span class="word">${finding.status}</span>
    <span class="question">${told(finding.worded.question)}</span>
    <span class="place">${finding.where.part ?? ""}</span>
  `;
}

function goButton(finding: Finding, actions: FindingActions): TemplateResult {
  const { at, stroke } = finding.where;
  if (at == null && stroke == null) return html``;
  return html`<button type="button" class="go" @click=${() => actions.go(finding)}>
    ${stroke == null ? "Show where" : `Show at ${Math.round(stroke * 100)} % of the stroke`}
  </button>`;
}

const sentence = (words: Sentence): string => {
  const text = told(words);
  return text.charAt(0).toUpperCase() + text.slice(1) + ".";
};

function workings(finding: Finding): TemplateResult {
  return html`
    <p class="formula">${finding.formula}</p>
    ${range(finding)}
    ${finding.restsOn.length === 0
      ? ""
      : html`<div class="rests">
          It hangs on
          <ul>
            ${finding.restsOn.map(ground)}
          </ul>
        </div>`}
  `;
}

/** The margin at both ends of what moves it, as the verdict was decided on. */
function range({ margin, margins, unit }: Finding): TemplateResult {
  if (margin == null || !margins) return html``;
  const shown = (value: number): string => fieldValue(value, unit);
  return html`<p class="formula range">
    Margin ${shown(margin)} ${fieldUnit(unit)}; ${shown(margins.low)} to ${shown(margins.high)} as what it hangs on turns out.
  </p>`;
}

function ground(g: Ground): TemplateResult {
  const unit = fieldUnit(g.unit);
  const shown = (value: number): string => fieldValue(value, g.unit);
  return html`<li>
    ${g.name} ${shown(g.value)}${unit && ` ${unit}`}, ${shown(g.low)} to ${shown(g.high)}: <em>${g.basis}</em>
    (${g.source})
  </li>`;
}
