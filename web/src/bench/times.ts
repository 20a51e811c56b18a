import { html, type PropertyValues, type TemplateResult } from "lit";
import { type Frozen, get, type TimedWork, type UsualTime, type UsualTimes } from "../core/api.js";
import { BenchPart } from "./part.js";
import { pictureKey, twoBars } from "./picture.js";
import { words } from "./state.js";
import { many } from "../core/words.js";
import { plain } from "./words.js";
import { stageWords } from "../core/stages.js";

/** Minutes of hands, timed, beside those that the workshop's numbers suppose. */
class BenchTimes extends BenchPart {
  static override properties = { ...BenchPart.properties, usual: { state: true } };

  private usual: UsualTimes | null = null;
  private of = "";
  private problem = "";
  private operation: string | null = null;

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const { view } = this.bench;
    const there = view?.designs.find(({ id }) => id === view.design)?.there ?? false;
    if (view && view.design !== this.of) {
      this.of = view.design;
      this.usual = null;
      this.problem = "";
      if (there) void this.ask(view.design);
    }
  }

  private async ask(design: string): Promise<void> {
    try {
      const usual = await get<UsualTimes>(`/api/bench/times?${new URLSearchParams({ design })}`);
      if (design === this.of) this.usual = usual;
    } catch (e) {
      this.problem = words(e);
      this.requestUpdate();
    }
  }

  protected override render(): TemplateResult {
    const { view } = this.bench;
    if (!view) return html``;
    if (view.design === "") return html`<p>Times are of one design: choose it above.</p>`;
    const revision = view.revisions.at(-1);
    if (!revision) return html`<bench-freeze .bench=${this.bench}></bench-freeze>`;
    return html`<section>
      <h2>Time it</h2>
      ${this.form(revision, view.choices.operations)}
      <h2>For one piece</h2>
      ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""}
      ${this.usual || this.problem || this.of === "" ? "" : html`<p class="waiting" role="status">Working out the usual times …</p>`}
      ${this.usual?.trouble ? html`<p class="problem">${this.usual.trouble}</p>` : ""} ${this.table(view.timed)}
    </section>`;
  }

  private form(revision: Frozen, operations: string[]): TemplateResult {
    const chosen = this.operation ?? operations.find((name) => name === "build") ?? operations[0] ?? "";
    return html`<form class="bench-form" @submit=${(e: Event) => this.log(e, revision)}>
      <label
        >Work
        <select
          class="timing-operation"
          @change=${(e: Event) => {
            this.operation = (e.target as HTMLSelectElement).value;
            this.requestUpdate();
          }}
        >
          ${operations.map(
            (name) => html`<option value=${name} .selected=${name === chosen}>${stageWords(name)}</option>`,
          )}
          ${(this.usual?.operations ?? [])
            .filter(({ name }) => !operations.includes(name))
            .map(({ name, what }) => html`<option value=${name} .selected=${name === chosen}>${stageWords(name)}: ${what}</option>`)}
          <option value="" .selected=${chosen === ""}>something else</option>
        </select></label
      >
      ${chosen === "" ? html`<label>Called <input class="timing-other" maxlength="80" required /></label>` : ""}
      <label>Minutes <input class="timing-minutes" inputmode="decimal" required /></label>
      <label>For pieces <input class="timing-pieces" type="number" min="1" value="1" inputmode="numeric" required /></label>
      <button class="apply">Log it</button>
    </form>`;
  }

  private log(event: Event, revision: Frozen): void {
    event.preventDefault();
    this.bench.log("timings", {
      design: revision.design,
      revision: String(revision.number),
      operation: this.text(".timing-operation") || this.text(".timing-other"),
      minutes: plain(this.text(".timing-minutes")),
      pieces: this.text(".timing-pieces"),
    });
    this.empty(".timing-minutes");
  }

  private table(work: TimedWork[]): TemplateResult {
    const timed = new Map(work.map((one) => [one.operation, one]));
    const stages = this.usual?.stages ?? [];
    const usual = new Map([...(this.usual?.operations ?? []), ...stages].map((time) => [time.name, time]));
    const names = [...new Set([...stages.map(({ name }) => name), ...timed.keys()])];
    const most = Math.max(1, ...names.map((name) => Math.max(usual.get(name)?.minutes ?? 0, timed.get(name)?.minutes ?? 0)));
    return html`<ul class="time-rows">
        ${names.map((name) => this.row(name, timed.get(name), usual.get(name), most))}
      </ul>
      ${pictureKey("timed", "supposed")}`;
  }

  private row(
    name: string,
    timed: TimedWork | undefined,
    usual: UsualTime | undefined,
    most: number,
  ): TemplateResult {
    return html`<li data-operation=${name}>
      <strong>${stageWords(name)}</strong>
      ${twoBars(timed?.minutes ?? null, usual?.minutes ?? null, most)}
      <span class="small">
        ${timed
          ? `${minutes(timed.minutes)} timed, on ${many(timed.pieces, "piece")} of revision ${timed.revision}`
          : "not timed yet"}${usual
          ? `; ${minutes(usual.minutes)} supposed, ${usual.low.toFixed(0)} to ${usual.high.toFixed(0)}${usual.guess ? ", a guess" : ""}`
          : "; nothing is supposed for it"}
      </span>
    </li>`;
  }
}

const minutes = (count: number): string => `${Number(count.toFixed(1))} min`;

customElements.define("bench-times", BenchTimes);
