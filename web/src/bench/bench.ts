import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import "./log.js";
import "./measured.js";
import "./phone.js";
import "./pieces.js";
import "./revisions.js";
import { BenchState } from "./state.js";
import "./times.js";
import "./tries.js";
import { many } from "../core/words.js";
import type { Desk } from "../core/desk.js";
import type { Room } from "../core/room.js";
import { shownIn } from "../core/units.js";

interface Part {
  id: string;
  title: string;
  show(bench: BenchState, desk: Desk): TemplateResult;
}

const PARTS: Part[] = [
  { id: "tries", title: "Tries", show: (bench) => html`<bench-tries .bench=${bench}></bench-tries>` },
  {
    id: "revisions",
    title: "Revisions",
    show: (bench) => html`<bench-revisions .bench=${bench}></bench-revisions>`,
  },
  { id: "times", title: "Times", show: (bench) => html`<bench-times .bench=${bench}></bench-times>` },
  {
    id: "measured",
    title: "Measured",
    show: (bench, desk) => html`<bench-measured .bench=${bench} .desk=${desk}></bench-measured>`,
  },
  { id: "pieces", title: "Pieces", show: (bench) => html`<bench-pieces .bench=${bench}></bench-pieces>` },
  { id: "log", title: "The log", show: (bench) => html`<bench-log .bench=${bench}></bench-log>` },
  { id: "phone", title: "A phone", show: (bench) => html`<bench-phone .bench=${bench}></bench-phone>` },
];

/** What really happened: tries, times, measurements, pieces. */
class BenchRoom extends LitElement {
  static override properties = { desk: { attribute: false }, all: { state: true } };

  desk!: Desk;
  private all = false;
  private version = "";
  private workshop = "";
  private lengths = shownIn();
  private readonly bench: BenchState = new BenchState();

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.bench.watch(this);
    this.workshop = "";
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.bench.end();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("desk")) this.desk.watch(this);
    const workshop = this.desk.workshop?.name ?? "";
    if (workshop === "") return;
    if (workshop !== this.workshop) {
      this.workshop = workshop;
      this.bench.begin(workshop);
    }
    const wanted = this.all ? "" : this.desk.chosen;
    const version = this.desk.view?.version ?? "";
    if (wanted !== this.bench.design || version !== this.version) {
      this.version = version;
      void this.bench.choose(wanted);
    }
  }

  /** What shows lengths follows when they are shown otherwise. */
  protected override updated(): void {
    if (shownIn() === this.lengths) return;
    this.lengths = shownIn();
    this.bench.changed();
  }

  private get chosen(): Part {
    const id = location.hash.split("&")[2];
    return PARTS.find((part) => part.id === id) ?? (PARTS[0] as Part);
  }

  protected override render(): TemplateResult {
    const { bench } = this;
    const { view } = bench;
    const shown = view !== null && view.design === bench.design;
    return html`<section
      class="bench"
      data-state=${shown ? "ready" : "waiting"}
      data-waiting=${bench.waiting}
      data-part=${this.chosen.id}
    >
      <div class="bench-head">
        ${this.chooser()}
        <nav class="parts" aria-label="The bench">
          ${PARTS.map(
            (part) =>
              html`<a
                href="${this.desk.address(this.desk.chosen, "bench")}&${part.id}"
                aria-current=${part === this.chosen ? "page" : "false"}
                >${part.title}</a
              >`,
          )}
        </nav>
      </div>
      ${this.told()} ${bench.problem && !bench.away ? html`<pre class="problem" role="alert">${bench.problem}</pre>` : ""}
      ${shown ? this.chosen.show(bench, this.desk) : html`<p class="waiting" role="status">Reading the log …</p>`}
    </section>`;
  }

  private told(): TemplateResult {
    const { away, refused, waiting } = this.bench;
    return html`
      <div role="status" class="unsent">
        ${waiting > 0 && away
          ? html`<p class="told">
              Jackwork does not answer: ${many(waiting, "entry waits", "entries wait")} here and will be sent when it does.
            </p>`
          : ""}
      </div>
      ${refused
        ? html`<p class="told away" role="alert">
            <span class="as-told">Not taken: ${refused}</span> <button type="button" class="plain" @click=${this.heard}>Close</button>
          </p>`
        : ""}
    `;
  }

  private readonly heard = (): void => {
    this.bench.refused = "";
    this.bench.changed();
  };

  private chooser(): TemplateResult {
    const { desk, bench } = this;
    const known = bench.view?.designs ?? (desk.workshop?.designs ?? []).map(({ id, name }) => ({ id, title: name, there: true }));
    const choose = (e: Event): void => {
      const { value } = e.target as HTMLSelectElement;
      this.all = value === "";
      if (value !== "") location.hash = `${desk.address(value, "bench")}&${this.chosen.id}`;
    };
    return html`<label class="chooser"
      >Design
      <select class="bench-design" @change=${choose}>
        ${known.map(
          ({ id, title, there }) => html`<option value=${id} .selected=${!this.all && id === desk.chosen}>
            ${title}${there ? "" : " (gone, in the log)"}
          </option>`,
        )}
        <option value="" .selected=${this.all}>all of them</option>
      </select>
    </label>`;
  }
}

customElements.define("jackwork-bench", BenchRoom);

export const bench: Room = {
  id: "bench",
  title: "Bench",
  ofDesign: false,
  show: (desk) => html`<jackwork-bench .desk=${desk}></jackwork-bench>`,
};
