import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { type Builds, designPath, type Proposal, type Setting } from "../core/api.js";
import type { Desk } from "../core/desk.js";
import { Following } from "../core/jobs.js";
import { set } from "../core/merge.js";
import { numberWords } from "../core/names.js";
import { fieldUnit, fieldValue } from "../core/units.js";

/** How far a number may go at first, as shares of what it is. */
const LEAST = 0.6;
const MOST = 1.5;
const MOST_FREE = 4;

interface Free {
  path: string;
  low: string;
  high: string;
}

/** Lets the computer try numbers that the maker leaves free, on sample pieces; its proposal stands beside the present. */
class Tuning extends LitElement {
  static override properties = { desk: { attribute: false }, free: { state: true } };

  desk: Desk | null = null;
  private readonly work = new Following(this);
  private free: Free[] = [];
  private of = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("desk")) this.desk?.watch(this);
    const id = this.desk?.view?.id ?? "";
    if (id !== this.of) {
      this.of = id;
      this.free = [];
      this.work.forget();
    }
  }

  private get settings(): Setting[] {
    return (this.desk?.view?.changeable.settings ?? []).filter(
      ({ path }) => !/\.(layer|teeth)$|\.case\.|\.pictures\.|cash-room/.test(path),
    );
  }

  protected override render(): TemplateResult {
    const left = this.settings.filter(({ path }) => !this.free.some((other) => other.path === path));
    return html`<section class="tuning" aria-labelledby="tuning-title">
      <h3 id="tuning-title">Let it look for better numbers</h3>
      <p>Say which numbers may change, and how far. It makes pieces with each and keeps what fails least.</p>
      ${this.free.map((free, i) => this.row(free, i))}
      ${this.free.length >= MOST_FREE
        ? ""
        : html`<p>
            <label
              >May change
              <select class="free" @change=${this.add}>
                <option value="">choose a number</option>
                ${left.map(({ path }) => html`<option value=${path}>${numberWords(path)}</option>`)}
              </select></label
            >
          </p>`}
      <p class="buttons">
        ${this.work.running
          ? html`<button type="button" class="stop" @click=${() => void this.work.stop()}>Stop</button>`
          : html`<button type="button" class="begin-tuning" ?disabled=${this.free.length === 0} @click=${this.begin}>
              Look for them
            </button>`}
      </p>
      ${this.said()} ${this.work.problem ? html`<p class="problem">${this.work.problem}</p>` : ""}
      ${this.work.job?.proposal ? this.proposal(this.work.job.proposal) : ""}
    </section>`;
  }

  private row(free: Free, number: number): TemplateResult {
    const change = (end: "low" | "high") => (e: Event) => {
      const value = (e.target as HTMLInputElement).value;
      this.free = this.free.map((other, i) => (i === number ? { ...other, [end]: value } : other));
    };
    const words = numberWords(free.path);
    return html`<p class="free-row">
      <span>${words}</span>
      <input inputmode="decimal" aria-label=${`${words}, at least`} .value=${free.low} @change=${change("low")} />
      to
      <input inputmode="decimal" aria-label=${`${words}, at most`} .value=${free.high} @change=${change("high")} />
      <button type="button" class="plain" @click=${() => (this.free = this.free.filter((_, i) => i !== number))}>
        leave it
      </button>
    </p>`;
  }

  private readonly add = (event: Event): void => {
    const select = event.target as HTMLSelectElement;
    const setting = this.settings.find(({ path }) => path === select.value);
    select.value = "";
    if (!setting) return;
    const ends = [setting.value * LEAST, setting.value * MOST].sort((a, b) => a - b);
    const [low = 0, high = 1] = setting.whole ? ends.map(Math.round) : ends;
    this.free = [
      ...this.free,
      { path: setting.path, low: low.toFixed(2), high: (high === low ? low + 1 : high).toFixed(2) },
    ];
  };

  private readonly begin = (): void => {
    const view = this.desk?.view;
    if (!view) return;
    const free = this.free.map(({ path, low, high }) => ({ path, low: Number(low), high: Number(high) }));
    void this.work.begin(designPath(view.id, "tune"), { free, seed: 1 });
  };

  private said(): TemplateResult {
    const { job } = this.work;
    if (!job) return html``;
    return html`<p class="progress" role="status">
      ${job.state === "running" ? html`<progress aria-label="Looking"></progress>` : ""}
      <span>${job.lines.length} tried${job.state === "stopped" ? ", then stopped" : ""}</span>
    </p>`;
  }

  private proposal(proposal: Proposal): TemplateResult {
    const now = (path: string) => this.settings.find((setting) => setting.path === path);
    const steps = proposal.numbers.map(({ path, value }) => set(path, Math.round(value * 1000) / 1000));
    return html`<table class="proposal">
        <caption>
          What it proposes, told on fresh pieces
        </caption>
        <thead>
          <tr>
            <td></td>
            <th scope="col">now</th>
            <th scope="col">proposed</th>
          </tr>
        </thead>
        <tbody>
          ${proposal.numbers.map(({ path, value }) => {
            const setting = now(path);
            const unit = setting?.unit ?? "1";
            return html`<tr>
              <th scope="row">${numberWords(path)} ${fieldUnit(unit)}</th>
              <td>${setting ? fieldValue(setting.value, unit) : "–"}</td>
              <td>${fieldValue(value, unit)}</td>
            </tr>`;
          })}
          <tr>
            <th scope="row">pieces that work</th>
            <td>${share(proposal.before)}</td>
            <td>${share(proposal.after)}</td>
          </tr>
        </tbody>
      </table>
      <p class="buttons">
        <button
          type="button"
          class="apply"
          @click=${() => void this.desk?.edit("better numbers", steps).then(() => this.work.forget())}
        >
          Apply
        </button>
      </p>`;
  }
}

const share = (builds: Builds): string => `${builds.passes} of ${builds.builds}`;

customElements.define("jackwork-tuning", Tuning);
