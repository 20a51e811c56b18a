import { html, type TemplateResult } from "lit";
import { type BenchView, type MeasuredTry, post } from "../core/api.js";
import { type Field, FORMS, type MeasuringForm } from "./forms.js";
import { BenchPart } from "./part.js";
import { words } from "./state.js";
import "./use.js";
import { many } from "../core/words.js";
import { thingWords, valueWords } from "./words.js";
import type { Desk } from "../core/desk.js";
import { fieldUnit } from "../core/units.js";

/** Things measured: looked at before they are kept, then put to use. */
class BenchMeasured extends BenchPart {
  static override properties = { ...BenchPart.properties, desk: { attribute: false }, form: { state: true } };

  desk!: Desk;
  private form: MeasuringForm | null = null;
  private looked: { result: MeasuredTry; fields: Record<string, string> } | null = null;
  private problem = "";
  private kept = "";

  protected override render(): TemplateResult {
    const { view } = this.bench;
    if (!view) return html``;
    return html`
      <section aria-labelledby="measure">
        <h2 id="measure">Measure something</h2>
        <div class="form-choice" role="group" aria-label="What to measure">
          ${FORMS.map(
            (form) => html`<button type="button" aria-pressed=${form === this.form} data-form=${form.id} @click=${() => this.take(form)}>
              ${form.picture}<span>${form.title}</span>
            </button>`,
          )}
        </div>
        ${this.form ? this.filling(this.form, view) : ""}
        <p role="status" class="kept-words">${this.kept}</p>
      </section>
      ${this.measured(view)}
      <bench-use .bench=${this.bench} .desk=${this.desk}></bench-use>
    `;
  }

  private take(form: MeasuringForm): void {
    this.form = this.form === form ? null : form;
    this.looked = null;
    this.problem = this.kept = "";
  }

  private filling(form: MeasuringForm, view: BenchView): TemplateResult {
    const wantsDesign = form.logs === "bucket" && view.design === "";
    return html`<div class="measuring" data-form=${form.id}>
      <p>${form.how}</p>
      ${wantsDesign
        ? html`<p>The bucket is that of one design: choose it above.</p>`
        : html`<form class="bench-form" @submit=${(e: Event) => this.look(e, form)} @input=${this.altered}>
            ${form.fields.map((field) => this.field(field, form, view))}
            <button>What it comes to</button>
          </form>`}
      ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""}
      ${this.looked ? this.result(form, this.looked.result) : ""}
    </div>`;
  }

  private field(field: Field, form: MeasuringForm, view: BenchView): TemplateResult {
    const label = field.length ? `${field.label}, ${fieldUnit("mm")}` : field.label;
    const id = `${form.id}-${field.name}`;
    if (field.choices) {
      const wanted = field.name === "one" ? "coin" : field.name === "other" ? "wood" : "";
      return html`<label
        >${label}
        <select class=${id}>
          ${field.choices(view).map((choice) => html`<option .selected=${choice === wanted}>${choice}</option>`)}
        </select></label
      >`;
    }
    return html`<label class=${field.several ? "wide" : ""}
      >${label}
      <input
        class=${id}
        inputmode=${field.several ? "text" : "decimal"}
        .defaultValue=${field.value?.() ?? ""}
        placeholder=${field.several ? "apart by blanks" : ""}
    /></label>`;
  }

  /** What was looked at is not what stands there any more. */
  private readonly altered = (): void => {
    if (!this.looked) return;
    this.looked = null;
    this.requestUpdate();
  };

  private async look(event: Event, form: MeasuringForm): Promise<void> {
    event.preventDefault();
    const fields = form.entry((name) => this.text(`.${form.id}-${name}`), this.bench.view?.design ?? "");
    this.looked = null;
    this.problem = this.kept = "";
    try {
      this.looked = { result: await post<MeasuredTry>("/api/bench/measured", { kind: form.logs, fields }), fields };
    } catch (e) {
      this.problem = words(e);
    }
    this.requestUpdate();
  }

  private result(form: MeasuringForm, result: MeasuredTry): TemplateResult {
    const { alone, together, measurements, why } = result;
    return html`<div class="outcome-measured" role="status">
      <p>
        ${alone ? html`<strong>${valueWords(alone)}</strong>` : why}
        ${measurements > 1
          ? html`<br />With ${many(measurements - 1, "measurement")} kept before: ${together ? html`<strong>${valueWords(together)}</strong>` : "still too few"}`
          : ""}
      </p>
      <p class="small">Where the next one will be, 95 times in 100.</p>
      <p class="buttons"><button type="button" class="apply keep" @click=${() => this.keep(form)}>Keep it</button></p>
    </div>`;
  }

  private keep(form: MeasuringForm): void {
    if (!this.looked) return;
    this.bench.log(form.logs, this.looked.fields);
    this.kept = `Kept, for ${this.looked.result.place}.`;
    this.looked = null;
    this.form = null;
    this.requestUpdate();
  }

  private measured(view: BenchView): TemplateResult {
    if (view.measured.length === 0) return html`<p>Nothing is measured yet; the workshop's numbers stand as they are.</p>`;
    return html`<section>
      <h2>Measured here</h2>
      <ul class="measured-list">
        ${view.measured.map(
          (thing) => html`<li data-name=${thing.name}>
            <strong>${thingWords(thing)}</strong>: ${thing.value ? valueWords(thing.value) : thing.why}
            <span class="small">${many(thing.measurements, "measurement")}</span>
          </li>`,
        )}
      </ul>
    </section>`;
  }
}

customElements.define("bench-measured", BenchMeasured);
