import { html, type TemplateResult } from "lit";
import type { Finding, Ground, Report, Status } from "./api.js";

const MARK: Record<Status, string> = { pass: "✓", doubtful: "?", fail: "✗" };

export interface FindingActions {
  show(finding: Finding): void;
  leave(): void;
  go(finding: Finding): void;
}

const VERDICT: Record<Report["verdict"], string> = {
  works: "It works.",
  doubtful: "It works, but not for certain.",
  fails: "It fails.",
};

export function verdict(report: Report): TemplateResult {
  return html`<h2 class="verdict ${report.verdict}" role="status">${VERDICT[report.verdict]}</h2>`;
}

/** Worst first: what fails or is doubtful laid open, what passes a line each. */
export function findingList(report: Report, actions: FindingActions): TemplateResult {
  const trouble = report.findings.filter((f) => f.status !== "pass");
  const fine = report.findings.filter((f) => f.status === "pass");
  return html`
    ${trouble.map((f) => open(f, actions))}
    ${fine.length === 0 ? "" : html`<h3>Passed, ${fine.length}</h3>`}
    ${fine.map((f) => folded(f, actions))}
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
    <p>${sentence(finding.why)}</p>
    ${finding.remedy ? html`<p class="remedy">${finding.remedy}</p>` : ""}
    <div class="more">
      ${goButton(finding, actions)}
      <details>
        <summary>How it was worked out</summary>
        ${workings(finding)}
      </details>
    </div>
  </article>`;
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
    <p>${sentence(finding.why)}</p>
    ${workings(finding)}
    <div class="more">${goButton(finding, actions)}</div>
  </details>`;
}

function row(finding: Finding): TemplateResult {
  return html`
    <span class="mark" aria-hidden="true">${MARK[finding.status]}</span>
    <span class="word">${finding.status}</span>
    <span class="question">${finding.question}</span>
    <span class="place">${finding.where.part ?? ""}</span>
  `;
}

function goButton(finding: Finding, actions: FindingActions): TemplateResult {
  const { at, stroke } = finding.where;
  if (at == null && stroke == null) return html``;
  return html`<button type="button" class="go" @click=${() => actions.go(finding)}>
    ${stroke == null ? "Show where" : `Show at stroke ${Math.round(stroke * 100)} %`}
  </button>`;
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1) + ".";

function workings(finding: Finding): TemplateResult {
  return html`
    <p class="formula">${finding.formula}</p>
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

function ground(g: Ground): TemplateResult {
  const unit = g.unit === "1" ? "" : ` ${g.unit}`;
  return html`<li>
    ${g.name} ${g.value}${unit}, ${g.low} to ${g.high}: <em>${g.basis}</em> (${g.source})
  </li>`;
}
