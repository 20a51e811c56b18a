import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { designPath, type JobView } from "../core/api.js";
import { Following } from "../core/jobs.js";
import type { Source } from "./making.js";

/** One button: every file for so many pieces, in one zip. */
class MakePack extends LitElement {
  static override properties = { source: { attribute: false }, quantity: { type: Number } };

  source: Source | null = null;
  quantity = 1;
  private readonly work = new Following(this);
  /** What the work under way, or done, is of. */
  private of: Source | null = null;
  private fetched = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("source") && this.of && this.source && this.source.id !== this.of.id) {
      this.of = null;
      this.work.forget();
    }
  }

  protected override updated(): void {
    const { job } = this.work;
    if (job?.packed && this.fetched !== job.number) {
      this.fetched = job.number;
      this.querySelector<HTMLAnchorElement>("a.packed")?.click();
    }
  }

  protected override render(): TemplateResult {
    const { job, running, problem } = this.work;
    const many = this.quantity === 1 ? "one piece" : `${this.quantity} pieces`;
    return html`<div class="packing">
      ${running
        ? html`<button type="button" class="stop" @click=${() => void this.work.stop()}>Stop</button>`
        : html`<button type="button" class="make-pack" ?disabled=${!this.source} @click=${this.begin}>
            Make the pack, for ${many}
          </button>`}
      ${job ? this.progress(job) : ""} ${problem ? html`<p class="problem" role="alert">${problem}</p>` : ""}
    </div>`;
  }

  private readonly begin = (): void => {
    if (!this.source) return;
    this.of = this.source;
    void this.work.begin(designPath(this.source.id, "pack"), this.source.making);
  };

  private progress(job: JobView): TemplateResult {
    const last = job.lines[job.lines.length - 1] ?? "laying out the sheets";
    const stale = this.source?.key !== this.of?.key;
    return html`
      ${job.state === "running"
        ? html`<p class="progress">
            <progress aria-label="Making the pack"></progress><span>${job.done} files; ${last}</span>
          </p>`
        : ""}
      ${job.state === "stopped" ? html`<p role="status">Stopped; nothing was kept.</p>` : ""}
      ${job.packed
        ? html`<p role="status">
            <a class="packed" href=${`/api/packs/${job.number}`} download=${job.packed.file}>${job.packed.file}</a>:
            ${job.packed.files} files, ${(job.packed.bytes / 1e6).toFixed(1)} MB. Begin with contents.html in it.
          </p>`
        : ""}
      ${job.packed && stale ? html`<p class="stale">It is of what stood here before your last change.</p>` : ""}
      ${job.lines.length === 0
        ? ""
        : html`<details class="pack-lines">
            <summary>What was done</summary>
            <ol>
              ${job.lines.map((line) => html`<li>${line}</li>`)}
            </ol>
          </details>`}
    `;
  }
}

customElements.define("jackwork-pack", MakePack);
