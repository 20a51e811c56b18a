import { html, LitElement, type PropertyValues, svg, type TemplateResult } from "lit";
import type { DesignView } from "./core/api.js";
import { bring } from "./bring/bring.js";
import { Desk } from "./core/desk.js";
import { placed } from "./core/motion.js";
import { earlierFormat } from "./core/renewal.js";
import type { Room } from "./core/room.js";
import { sceneDrawing } from "./core/scene.js";
import { showIn, shownIn } from "./core/units.js";
import { rooms } from "./rooms.js";

/** A design at rest as it could be shown last: to be looked at, not to be changed. */
function lastShown({ id, scene, report }: DesignView): TemplateResult {
  const { minX, minY, maxX, maxY } = scene.bounds;
  return html`<figure class="last-shown" data-last=${id}>
    <figcaption>As it could be shown last:</figcaption>
    <svg class="scene" viewBox="${minX} ${-maxY} ${maxX - minX} ${maxY - minY}" role="img" aria-label=${`${scene.name}, as it could be shown last`}>
      ${svg`<g transform="scale(1 -1)">${sceneDrawing({
        scene,
        place: (body) => placed(report.motion.pressing, body, 0),
        frontOn: false,
        coin: null,
      })}</g>`}
    </svg>
  </figure>`;
}

/** The page: its places at the top, the choice of designs, and the room that is open. */
class JackworkPage extends LitElement {
  private readonly desk = new Desk().watch(this);

  protected override createRenderRoot(): HTMLElement {
    this.replaceChildren();
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("hashchange", this.desk.goToAddress);
    window.addEventListener("keydown", this.keys);
    void this.desk.begin();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("hashchange", this.desk.goToAddress);
    window.removeEventListener("keydown", this.keys);
  }

  private get room(): Room {
    return rooms.find((room) => room.id === this.desk.room) ?? (rooms[0] as Room);
  }

  protected override render(): TemplateResult {
    const { problem, waiting, view } = this.desk;
    return html`
      <header>
        ${this.places()}
        <div class="of-design">${this.room.ofDesign ? html`${this.history()} ${this.chooser()}` : ""} ${bring?.(this.desk) ?? ""} ${this.asides()}</div>
      </header>
      ${this.told()} ${earlierFormat(this.desk)}
      ${problem && !this.isOfEarlierFormat ? this.refusal() : ""}
      ${waiting && this.room.ofDesign ? html`<p class="waiting" role="status">Working it out …</p>` : ""}
      ${(view && !waiting) || !this.room.ofDesign ? this.room.show(this.desk) : ""}
      <footer>
        <p>
          Contains small parts and coins; keep from children under three. Not assessed to any toy standard. Lasers, fumes,
          fire, blades and pinching gaps hurt: local codes and licensed practice come before anything shown here.
        </p>
        <p>
          <button type="button" class="plain lengths" @click=${this.otherLengths}>
            Show lengths in ${shownIn() === "mm" ? "inches" : "millimetres"}
          </button>
        </p>
      </footer>
    `;
  }

  /** Whether nothing can be opened before that step is made, which says so itself. */
  private get isOfEarlierFormat(): boolean {
    return this.desk.workshop === null && (this.desk.renewal?.files.length ?? 0) > 0;
  }

  /** Says that the design is drawn, for whoever waits for it. */
  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    const { view, waiting } = this.desk;
    if (view && !waiting) this.setAttribute("data-ready", view.id);
    else this.removeAttribute("data-ready");
  }

  private places(): TemplateResult {
    return html`<nav aria-label="Questions">
      ${rooms.filter((room) => !room.aside || room === this.room).map((room) =>
        room === this.room
          ? html`<h1><a href=${this.desk.address(this.desk.chosen, room.id)} aria-current="page">${room.title}</a></h1>`
          : html`<a href=${this.desk.address(this.desk.chosen, room.id)}>${room.title}</a>`,
      )}
    </nav>`;
  }

  private asides(): TemplateResult[] {
    return rooms
      .filter((room) => room.aside && room !== this.room)
      .map((room) => html`<a class="aside" href=${this.desk.address(this.desk.chosen, room.id)}>${room.title}</a>`);
  }

  /** What was changed can be taken back and made again. */
  private history(): TemplateResult {
    const { view } = this.desk;
    const button = (way: "undo" | "redo", words: string, of: string | null | undefined): TemplateResult =>
      html`<button
        type="button"
        class="plain"
        data-step=${way}
        ?disabled=${!of}
        title=${of ?? ""}
        aria-label=${of ? `${words}: ${of}` : words}
        @click=${() => void this.desk.step(way)}
      >
        ${words}
      </button>`;
    if (!view || (!view.undo && !view.redo)) return html``;
    return html`<span class="history">
      ${button("undo", "Take back", view.undo)} ${button("redo", "Make again", view.redo)}
    </span>`;
  }

  private readonly keys = (event: KeyboardEvent): void => {
    const writing = event.target instanceof HTMLInputElement && event.target.type !== "range" && event.target.type !== "checkbox";
    if (!(event.ctrlKey || event.metaKey) || writing || !this.room.ofDesign) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    void this.desk.step(key === "y" || event.shiftKey ? "redo" : "undo");
  };

  private readonly otherLengths = (): void => {
    showIn(shownIn() === "mm" ? "in" : "mm");
    this.desk.changed();
  };

  /** What is to be known besides: that Jackwork is away, that something changed elsewhere, whose change is to stay. */
  private told(): TemplateResult {
    const { away, choice, note, shut, unsaved } = this.desk;
    return html`<div class="all-told">
      ${away
        ? html`<p class="told away" role="alert">
            ${shut
              ? "Jackwork was started again. Open the address that it printed, in this browser; then this page goes on."
              : "Jackwork does not answer. Start it again with: jackwork open"}
            ${unsaved > 0 ? "Your last change is kept here, and saved then." : ""}
          </p>`
        : ""}
      ${choice
        ? html`<div class="told choice" role="alertdialog" aria-label="Changed elsewhere">
            <p>${choice.text}</p>
            <button type="button" class="mine" @click=${() => choice.decide(true)}>Keep my change</button>
            <button type="button" class="theirs" @click=${() => choice.decide(false)}>Keep the other</button>
          </div>`
        : ""}
      ${note
        ? html`<p class="told" role="status">
            <span class="as-told">${note}</span>
            <button type="button" class="plain" @click=${this.heard}>Close</button>
          </p>`
        : ""}
    </div>`;
  }

  private readonly heard = (): void => {
    this.desk.note = "";
    this.desk.changed();
  };

  private refusal(): TemplateResult {
    const { problem, standing } = this.desk;
    return html`<pre class="problem" role="alert">${problem}</pre>
      ${standing?.undo
        ? html`<button type="button" class="take-back" data-step="undo" @click=${() => void this.desk.step("undo")}>
            Take back: ${standing.undo}
          </button>`
        : ""}
      <button type="button" class="again" @click=${() => void this.desk.begin()}>Read it again</button>
      ${standing?.last ? lastShown(standing.last) : ""}`;
  }

  private chooser(): TemplateResult {
    const { chosen, workshop } = this.desk;
    const designs = workshop?.designs ?? [];
    const known = designs.some((d) => d.id === chosen);
    if (designs.length === 0 || (designs.length === 1 && known)) return html``;
    return html`<label class="chooser"
      >Design
      <select
        @change=${(e: Event) => {
          location.hash = this.desk.address((e.target as HTMLSelectElement).value, this.desk.room);
        }}
      >
        ${known ? "" : html`<option value="" disabled .selected=${true}>choose one</option>`}
        ${designs.map((d) => html`<option value=${d.id} .selected=${d.id === chosen}>${d.name}</option>`)}
      </select>
    </label>`;
  }
}

customElements.define("jackwork-page", JackworkPage);
