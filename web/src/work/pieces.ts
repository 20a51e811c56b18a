import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { type Builds, type DesignView, designPath, get, type JobView, type Playback } from "../core/api.js";
import { Following } from "../core/jobs.js";

const FEW = 200;
const MANY = 1000;
const SEED = 1;

/**
 * Sample pieces: the design made again and again as hands and sheets make it, each with every coin. Tells a piece to be
 * watched as an event `film`.
 */
class SamplePieces extends LitElement {
  static override properties = { view: { attribute: false }, watched: { state: true } };

  view: DesignView | null = null;
  private readonly work = new Following(this);
  private of = "";
  /** The run that the numbers below are of. */
  private builds = FEW;
  private watched: number | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("view") && this.view && this.view.id !== this.of) {
      this.of = this.view.id;
      this.work.forget();
    }
  }

  protected override render(): TemplateResult {
    const { job } = this.work;
    return html`<section class="pieces" aria-labelledby="pieces-title">
      <h3 id="pieces-title">Sample pieces</h3>
      <p>
        No two pieces come out alike: sheets, holes, glue, coins and fingers differ. Make some on paper and see how many work.
      </p>
      <p class="buttons">
        ${this.work.running
          ? html`<button type="button" class="stop" @click=${() => void this.work.stop()}>Stop</button>`
          : [FEW, MANY].map(
              (count) => html`<button type="button" class="make-pieces" @click=${() => this.begin(count)}>
                Make ${count}
              </button>`,
            )}
      </p>
      ${job ? this.progress(job) : ""} ${this.work.problem ? html`<p class="problem">${this.work.problem}</p>` : ""}
      ${job?.builds ? this.outcome(job.builds, job) : ""}
    </section>`;
  }

  private begin(count: number): void {
    if (!this.view) return;
    this.builds = count;
    this.watched = null;
    void this.work.begin(designPath(this.view.id, "pieces"), { builds: count, seed: SEED });
  }

  private progress(job: JobView): TemplateResult {
    const words = { running: "made", done: "made", stopped: "made, then stopped", failed: "made, then it failed" }[job.state];
    return html`<p class="progress">
      <progress max=${job.size} value=${job.done} aria-label="Pieces made"></progress>
      <span>${job.done} of ${job.size} ${words}</span>
    </p>`;
  }

  private outcome(builds: Builds, job: JobView): TemplateResult {
    const stale = this.view?.version !== job.version;
    return html`
      ${stale ? html`<p class="stale">These are of the design as it was before your last change.</p>` : ""}
      <p class="share" role="status">
        <strong>${builds.passes} of ${builds.builds}</strong> work with every coin${builds.tuning
          ? html` at once, <strong>${builds.tuning.works}</strong> once they are tuned`
          : ""}
      </p>
      <p class="small">${builds.words}.</p>
      ${builds.causes.length === 0
        ? ""
        : html`<h4>Why the others do not</h4>
            <ul class="bars">
              ${builds.causes.map(
                (cause) => html`<li>
                  <progress max=${builds.builds} value=${cause.builds} aria-hidden="true"></progress>
                  ${cause.builds}: ${cause.words}
                </li>`,
              )}
            </ul>
            <p class="failing">
              Watch one:
              ${builds.failing.slice(0, 12).map(
                (number) => html`<button
                  type="button"
                  class="plain"
                  data-piece=${number}
                  aria-pressed=${this.watched === number}
                  ?disabled=${stale}
                  @click=${() => void this.watch(number)}
                >
                  piece ${number}
                </button> `,
              )}
            </p>`}
      ${this.card(builds)}
      ${builds.matters.numbers.length === 0
        ? ""
        : html`<h4>What matters most</h4>
            <ul class="bars">
              ${builds.matters.numbers.map(
                (matter) => html`<li>
                  <progress max="1" value=${Math.abs(matter.correlation)} aria-hidden="true"></progress>
                  ${matter.name}: ${matter.correlation > 0 ? "more helps" : "less helps"}${matter.guess ? ", a guess" : ""}
                </li>`,
              )}
            </ul>
            ${builds.matters.measureFirst ? html`<p class="remedy">${builds.matters.measureFirst}</p>` : ""}`}
      <p class="small">
        ${builds.conditions
          .filter((third) => third.builds > 0)
          .map((third) => `${third.name}: ${third.passes} of ${third.builds}`)
          .join(" · ")}
      </p>
    `;
  }

  /** What is set at the bench when one of them shows this or that. */
  private card(builds: Builds): TemplateResult | string {
    const lines = builds.tuning?.card ?? [];
    return lines.length === 0
      ? ""
      : html`<h4>Tuning card</h4>
          <table class="card">
            <thead>
              <tr>
                <th scope="col">When</th>
                <th scope="col">set</th>
                <th scope="col">helps in</th>
              </tr>
            </thead>
            <tbody>
              ${lines.map(
                (line) => html`<tr>
                  <td>${line.seen}</td>
                  <td>${line.set ?? "nothing that can be set helps: watch one"}</td>
                  <td>${line.helps} of ${line.of}</td>
                </tr>`,
              )}
            </tbody>
          </table>`;
  }

  private async watch(number: number): Promise<void> {
    if (!this.view) return;
    this.watched = number;
    try {
      const query = `builds=${this.builds}&seed=${SEED}&number=${number}`;
      const film = await get<Playback>(`${designPath(this.view.id, "piece")}?${query}`);
      this.dispatchEvent(new CustomEvent("film", { detail: film, bubbles: true }));
    } catch (e) {
      this.work.problem = e instanceof Error ? e.message : String(e);
      this.requestUpdate();
    }
  }
}

customElements.define("jackwork-pieces", SamplePieces);
