import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { type DesignName, designPath, get, post, Refused, type Section, type Value, type VerdictView, type VersionView, type WorkshopView } from "../core/api.js";
import type { Desk } from "../core/desk.js";
import { lastStep } from "../core/renewal.js";
import type { Room } from "../core/room.js";
import { addingTo } from "./adding.js";
import { valueRow } from "./row.js";
import { verdictsList } from "./verdicts.js";
import { nothing, type Wish } from "./wish.js";

/** How often the file is looked at for what was changed elsewhere, ms. */
const LOOK_EVERY = 1500;

/** My workshop: every number of it with what it rests on, and what that does to the designs. */
class WorkshopRoom extends LitElement {
  static override properties = {
    desk: { attribute: false },
    view: { state: true },
    verdicts: { state: true },
    earlier: { state: true },
    problem: { state: true },
    sought: { state: true },
    guessesOnly: { state: true },
    openForm: { state: true },
  };

  private view: WorkshopView | null = null;
  desk: Desk | null = null;
  /** By design, as they come. */
  private verdicts: ReadonlyMap<string, VerdictView> = new Map();
  /** As they were before the last change, to tell what it turned. */
  private earlier: ReadonlyMap<string, VerdictView> = new Map();
  private asking: AbortController | null = null;
  private problem = "";
  private sought = "";
  private guessesOnly = false;
  private openForm = "";
  private timer = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("keydown", this.keys);
    void this.fetchAll();
    this.timer = window.setInterval(() => void this.look(), LOOK_EVERY);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("keydown", this.keys);
    clearInterval(this.timer);
    this.asking?.abort();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("desk")) this.desk?.watch(this);
  }

  protected override render(): TemplateResult {
    const { view } = this;
    return html`<main class="workshop" ?data-ready=${view !== null}>
      <section class="verdicts" tabindex="0" aria-label="What the designs hang on">${verdictsList(this.designs, this.verdicts, this.earlier)}</section>
      <section class="values" aria-label="The workshop's numbers">
        ${this.problem ? html`<p class="problem" role="alert">${this.problem}</p>` : ""}
        ${view?.putAside ? html`<p class="told" role="status">${view.putAside}</p>` : ""}
        ${this.desk ? lastStep(this.desk) : ""}
        ${view ? this.all(view) : html`<p class="waiting" role="status">Reading your workshop …</p>`}
      </section>
    </main>`;
  }

  private get designs(): DesignName[] {
    return this.desk?.workshop?.designs ?? [];
  }

  private all(view: WorkshopView): TemplateResult {
    const shown = view.sections.map((section) => ({ section, values: this.sift(section) }));
    const sifting = this.sought !== "" || this.guessesOnly;
    return html`
      <div class="sift">
        <label>Find <input type="search" .value=${this.sought} @input=${(e: Event) => (this.sought = (e.target as HTMLInputElement).value)} /></label>
        <label class="front"
          ><input
            type="checkbox"
            .checked=${this.guessesOnly}
            @change=${(e: Event) => (this.guessesOnly = (e.target as HTMLInputElement).checked)}
          />
          guesses only</label
        >
        <span class="history">${this.stepButton("undo", "Take back", view.undo)} ${this.stepButton("redo", "Make again", view.redo)}</span>
      </div>
      ${repeat(
        shown.filter(({ values }) => values.length > 0 || !sifting),
        ({ section }) => section.id,
        ({ section, values }) => this.section(view, section, values, sifting),
      )}
    `;
  }

  private sift(section: Section): Value[] {
    const sought = this.sought.trim().toLowerCase();
    return section.groups.flatMap((group) =>
      group.values.filter(
        (value) =>
          (!this.guessesOnly || value.number?.basis === "guess") &&
          `${section.title} ${group.name} ${value.name} ${value.about}`.toLowerCase().includes(sought),
      ),
    );
  }

  private section(view: WorkshopView, section: Section, values: Value[], sifting: boolean): TemplateResult {
    const guesses = values.filter((value) => value.number?.basis === "guess").length;
    return html`<details class="group" data-section=${section.id} ?open=${sifting && values.length < 40}>
      <summary>
        ${section.title} <span class="count">${values.length === 0 ? "nothing yet" : count(values.length, guesses)}</span>
      </summary>
      ${section.about ? html`<p class="about">${section.about}</p>` : ""}
      ${section.groups.map((group) => {
        const own = group.values.filter((value) => values.includes(value));
        if (own.length === 0) return "";
        return html`<div class="entry">
          ${group.name
            ? html`<div class="entry-row">
                <strong>${group.name.replaceAll("-", " ")}</strong>
                ${group.path ? this.takeOut(group.path, `${section.title}: ${group.name}`) : ""}
              </div>`
            : ""}
          ${repeat(
            own,
            (value) => value.path,
            (value) => valueRow(value, group.name || section.title, { save: this.save }),
          )}
        </div>`;
      })}
      ${addingTo(view, section.id, {
        isOpen: this.openForm === section.id,
        open: () => (this.openForm = section.id),
        close: () => (this.openForm = ""),
        add: (wish) => {
          void this.save(wish).then((done) => {
            if (done) this.openForm = "";
          });
        },
      })}
    </details>`;
  }

  private takeOut(path: string, name: string): TemplateResult {
    return html`<button
      type="button"
      class="plain take-out"
      aria-label=${`Take out ${name}`}
      @click=${() => void this.save({ ...nothing, label: `${name} taken out`, kind: "remove", path })}
    >
      take out
    </button>`;
  }

  private stepButton(way: "undo" | "redo", words: string, of: string | null): TemplateResult {
    return html`<button
      type="button"
      class="plain"
      data-step=${way}
      ?disabled=${!of}
      aria-label=${of ? `${words}: ${of}` : words}
      title=${of ?? ""}
      @click=${() => void this.step(way)}
    >
      ${words}
    </button>`;
  }

  private readonly keys = (event: KeyboardEvent): void => {
    const writing = event.target instanceof HTMLInputElement && event.target.type !== "checkbox";
    const key = event.key.toLowerCase();
    if (!(event.ctrlKey || event.metaKey) || writing || (key !== "z" && key !== "y")) return;
    event.preventDefault();
    void this.step(key === "y" || event.shiftKey ? "redo" : "undo");
  };

  /** Saves a change at once; false when it was refused. */
  private readonly save = async (wish: Wish): Promise<boolean> => {
    const { view } = this;
    if (!view) return false;
    return this.send("/api/values/edit", { base: view.version, ...wish });
  };

  private async step(way: "undo" | "redo"): Promise<void> {
    if (this.view?.[way]) await this.send(`/api/values/${way}`, { version: this.view.version });
  }

  private async send(path: string, body: unknown): Promise<boolean> {
    try {
      this.problem = "";
      this.desk?.expectChange(true);
      this.view = await post<WorkshopView>(path, body);
      void this.fetchVerdicts(true);
      return true;
    } catch (e) {
      this.desk?.expectChange(false);
      this.problem = words(e);
      if (e instanceof Refused && e.status === 409) await this.fetchAll();
      return false;
    }
  }

  private async fetchAll(): Promise<void> {
    try {
      this.view = await get<WorkshopView>("/api/values");
    } catch (e) {
      this.problem = words(e);
    }
    void this.fetchVerdicts(false);
  }

  /** Asks one design after the other: some take seconds. */
  private async fetchVerdicts(afterChange: boolean): Promise<void> {
    this.asking?.abort();
    const { signal } = (this.asking = new AbortController());
    if (afterChange) this.earlier = new Map([...this.earlier, ...this.verdicts]);
    this.verdicts = new Map();
    for (const { id } of this.designs) {
      try {
        const verdict = await get<VerdictView>(designPath(id, "values/verdict"), signal);
        if (signal.aborted) return;
        this.verdicts = new Map(this.verdicts).set(id, verdict);
      } catch (e) {
        if (signal.aborted) return;
        this.problem = words(e);
      }
    }
  }

  /** Shows what was changed elsewhere; what is being typed stays. */
  private async look(): Promise<void> {
    if (document.hidden || !this.view) return;
    try {
      const { version } = await get<VersionView>("/api/values/version");
      if (this.view.version !== version) await this.fetchAll();
    } catch (e) {
      if (!(e instanceof Refused && e.status === 0)) this.problem = words(e);
    }
  }
}

const count = (all: number, guesses: number): string =>
  `${all}, ${guesses === 0 ? "none a guess" : guesses === 1 ? "1 a guess" : `${guesses} guesses`}`;

const words = (e: unknown): string => (e instanceof Error ? e.message : String(e));

customElements.define("jackwork-workshop", WorkshopRoom);

export const workshop: Room = {
  id: "workshop",
  title: "My workshop",
  ofDesign: false,
  aside: true,
  show: (desk) => html`<jackwork-workshop .desk=${desk}></jackwork-workshop>`,
};
