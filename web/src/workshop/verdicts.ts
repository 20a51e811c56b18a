import { html, type TemplateResult } from "lit";
import type { DesignName, VerdictView } from "../core/api.js";
import { verdictWords } from "../core/words.js";

const MARK = { works: "✓", doubtful: "?", fails: "✗" };

type ByDesign = ReadonlyMap<string, VerdictView>;

/** Every design's verdict, what it hangs on, and what to measure next; what the last change turned comes first. */
export function verdictsList(designs: DesignName[], now: ByDesign, before: ByDesign): TemplateResult {
  return html`
    <h2>What the designs hang on</h2>
    ${before.size > 0 ? turned(designs, now, before) : ""}
    <ul class="hang-list">
      ${designs.map(({ id, name }) => {
        const verdict = now.get(id);
        return html`<li data-design=${id} data-known=${verdict ? "yes" : "no"}>
          <strong>${name}</strong> ${verdict ? one(verdict) : html`<span class="waiting">being asked …</span>`}
        </li>`;
      })}
    </ul>
    <p class="about">Every guess tried at both its ends, the effects added. “Sample pieces”, under “Will it work?”, varies all at once.</p>
  `;
}

function turned(designs: DesignName[], now: ByDesign, before: ByDesign): TemplateResult {
  const changes = designs.flatMap(({ id, name }) => {
    const [was, is] = [before.get(id), now.get(id)];
    return was && is && was.verdict !== is.verdict
      ? [`${name}: ${was.verdict ? verdictWords(was.verdict) : "could not be checked"} before, ${is.verdict ? verdictWords(is.verdict) : "cannot be checked"} now.`]
      : [];
  });
  const all = designs.every(({ id }) => now.has(id));
  const none = all ? "The last change turned no verdict." : "Asking what the last change turns …";
  return html`<p class="turned" role="status">
    ${changes.length === 0 ? none : changes.map((words) => html`${words}<br />`)}
  </p>`;
}

function one({ verdict, hangsOn, trouble }: VerdictView): TemplateResult {
  if (!verdict || !hangsOn) return html`cannot be checked: ${trouble}`;
  return html`<span class="verdict-word ${verdict}"><span aria-hidden="true">${MARK[verdict]}</span> ${verdictWords(verdict)}</span>
    <span class="hang-words">${hangsOn.words}</span>
    ${hangsOn.measureFirst ? html`<span class="how">${hangsOn.measureFirst}</span>` : ""}`;
}
