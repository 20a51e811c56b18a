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
  return html`<p class="verdict ${report.verdict}" role="status">${VERDICT[report.verdict]}</p>`;
}

export function findingList(report: Report, actions: FindingActions): TemplateResult {
  const trouble = report.findings.filter((f) => f.status !== "pass");
  const fine = report.findings.filter((f) => f.status === "pass");
  return html`
    ${trouble.map((f) => findingView(f, true, actions))}
    ${fine.length === 0 ? "" : html`<h3>Passed, ${fine.length}</h3>`}
    ${fine.map((f) => findingView(f, false, actions))}
  `;
}

function findingView(finding: Finding, wide: boolean, actions: FindingActions): TemplateResult {
  const show = (): void => actions.show(finding);
  const pointed = finding.where.at != null || finding.where.stroke != null;
  return html`<details
    class="finding ${finding.status}"
    data-finding=${finding.id}
    ?open=${wide}
    @mouseenter=${show}
    @mouseleave=${actions.leave}
    @focusin=${show}
    @focusout=${actions.leave}
  >
    <summary>
      <span class="mark" aria-hidden="true">${MARK[finding.status]}</span>
      <span class="word">${finding.status}</span>
      <span class="question">${finding.question}</span>
    </summary>
    <p>${sentence(finding.why)}</p>
    ${finding.remedy ? html`<p class="remedy">${finding.remedy}</p>` : ""}
    <p class="formula">${finding.formula}</p>
    ${finding.restsOn.length === 0 ? "" : html`<p class="rests">It hangs on ${grounds(finding.restsOn)}.</p>`}
    ${pointed
      ? html`<button type="button" @click=${() => actions.go(finding)}>
          ${finding.where.stroke == null ? "Show where" : `Show at stroke ${Math.round(finding.where.stroke * 100)} %`}
        </button>`
      : ""}
  </details>`;
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1) + ".";

function grounds(list: Ground[]): TemplateResult[] {
  return list.map(
    (g, i) => html`${i === 0 ? "" : "; "}<span title=${g.source}
      >${g.name} ${g.value}${g.unit === "1" ? "" : ` ${g.unit}`} (${g.low} to ${g.high},
      <em>${g.basis}</em>)</span
    >`,
  );
}

export function coinTable(report: Report): TemplateResult {
  if (report.coins.length === 0) return html``;
  const moment = (value: number | null): string => (value == null ? "–" : value.toFixed(2));
  return html`<table class="coins">
    <caption>
      Coins: the moment each turns the bucket with, and the moment needed, N·mm
    </caption>
    <thead>
      <tr>
        <th scope="col">coin</th>
        <th scope="col">fits</th>
        <th scope="col">tips it</th>
        <th scope="col">turns with</th>
        <th scope="col">needed</th>
      </tr>
    </thead>
    <tbody>
      ${report.coins.map(
        (c) => html`<tr>
          <th scope="row">${c.coin}</th>
          <td>${c.fits ? "yes" : "no"}</td>
          <td>${c.trips ? "yes" : "no"}</td>
          <td>${moment(c.tripMomentNmm)}</td>
          <td>${moment(c.needMomentNmm)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}
