import { html, type TemplateResult } from "lit";
import type { Desk } from "./desk.js";
import { many } from "./words.js";

const list = (lines: readonly string[]): TemplateResult => html`<ul>
  ${lines.map((line) => html`<li>${line}</li>`)}
</ul>`;

const named = (files: readonly string[], words: string): TemplateResult => html`<details>
  <summary>${words}</summary>
  ${list(files)}
</details>`;

const notCarried = (lost: readonly string[], words: string): TemplateResult =>
  lost.length === 0 ? html`` : html`<p>${words}</p>
    ${list(lost)}`;

const takeBack = (desk: Desk, files: number): TemplateResult =>
  html`<button type="button" class="renew-back" @click=${() => void desk.renewBack()}>
    Take it back: ${many(files, "file")} as before
  </button>`;

/** Files of an earlier format: what one step would do, and once it is done, what was not carried over. */
export function earlierFormat(desk: Desk): TemplateResult {
  const { renewal } = desk;
  if (!renewal) return html``;
  const { files, lost, back, backLost } = renewal;
  if (files.length > 0) {
    return html`<section class="told earlier-format" data-files=${files.length} aria-label="An earlier format">
      <p>
        ${many(files.length, "file")} of this workshop ${files.length === 1 ? "is" : "are"} of an earlier format, and Jackwork cannot
        open ${files.length === 1 ? "it" : "them"} like that. One step makes ${files.length === 1 ? "it" : "them"} of today's. Your
        comments stay, and the step can be taken back: every file is then again what it was, letter for letter.
      </p>
      <button type="button" class="renew" @click=${() => void desk.renew()}>Change ${many(files.length, "file")}</button>
      ${notCarried(lost, "What cannot be carried over:")}
      ${named(files, `Which ${files.length === 1 ? "file changes" : "files change"}`)}
    </section>`;
  }
  if (!desk.renewedNow || !back) return html``;
  return html`<section class="told earlier-format" data-done role="status" aria-label="Changed to today's format">
    <p>${many(back.length, "file")} changed to today's format. You find this again in “My workshop”.</p>
    ${takeBack(desk, back.length)}
    <button
      type="button"
      class="plain"
      @click=${() => {
        desk.renewedNow = false;
        desk.changed();
      }}
    >
      Close
    </button>
    ${notCarried(backLost, "What was not carried over:")}
  </section>`;
}

/** The last such step, for as long as it can be taken back. */
export function lastStep(desk: Desk): TemplateResult {
  const back = desk.renewal?.back;
  if (!back || desk.renewedNow) return html``;
  return html`<details class="earlier-format" data-last-step>
    <summary>${many(back.length, "file")} changed to today's format in one step</summary>
    <p>${takeBack(desk, back.length)}</p>
    ${notCarried(desk.renewal?.backLost ?? [], "What was not carried over:")} ${named(back, "Which files changed")}
  </details>`;
}
