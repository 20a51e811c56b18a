import { html, type TemplateResult } from "lit";
import type { Frozen } from "../core/api.js";
import "./compare.js";
import "./freeze.js";
import { BenchPart } from "./part.js";
import { many } from "../core/words.js";
import { between, day, percent } from "./words.js";

/** What is frozen, what has changed since, and two of them beside each other. */
class BenchRevisions extends BenchPart {
  protected override render(): TemplateResult {
    const { view } = this.bench;
    if (!view) return html``;
    const list = [...view.revisions].reverse();
    return html`
      <bench-freeze .bench=${this.bench}></bench-freeze>
      ${view.design !== "" && list.length > 0
        ? html`<bench-compare .bench=${this.bench}></bench-compare>`
        : ""}
      ${list.length > 0
        ? html`<h2>Frozen</h2>
            <ul class="revisions">
              ${list.map((revision) => this.revision(revision, view.design === ""))}
            </ul>`
        : view.design === ""
          ? html`<p>No design is frozen yet. Choose one above and freeze it.</p>`
          : ""}
    `;
  }

  private revision(revision: Frozen, titled: boolean): TemplateResult {
    const { all, design, number } = revision;
    const files = `/api/bench/files?${new URLSearchParams({ design, revision: String(number) })}`;
    return html`<li data-revision=${number}>
      <strong>${titled ? `${revision.title}, revision` : "Revision"} ${number}</strong>
      <span>${day(revision.at)}</span>
      ${revision.note ? html`<span class="note">“${revision.note}”</span>` : ""}
      <span class="small">
        ${all.rate === null
          ? "not tried"
          : `${many(all.tries, "try", "tries")}, ${percent(all.rate, 1)} passed, ${between(all.interval95)}`}
      </span>
      <a href=${files} download>Its files</a>
    </li>`;
  }
}

customElements.define("bench-revisions", BenchRevisions);
