import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { bring } from "./bring.js";
import { Desk } from "./desk.js";
import { type Room, rooms } from "./rooms.js";

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
    void this.desk.begin();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("hashchange", this.desk.goToAddress);
  }

  private get room(): Room {
    return rooms.find((room) => room.id === this.desk.room) ?? (rooms[0] as Room);
  }

  protected override render(): TemplateResult {
    const { problem, waiting, view } = this.desk;
    return html`
      <header>${this.places()} ${this.room.ofDesign ? this.chooser() : ""} ${bring?.(this.desk) ?? ""}</header>
      ${problem ? this.refusal() : ""}
      ${waiting ? html`<p class="waiting" role="status">Working it out …</p>` : ""}
      ${(view && !waiting) || !this.room.ofDesign ? this.room.show(this.desk) : ""}
      <footer>
        <p>
          Contains small parts and coins; keep from children under three. Not assessed to any toy standard. Lasers, fumes,
          fire, blades and pinching gaps hurt: local codes and licensed practice come before anything shown here.
        </p>
      </footer>
    `;
  }

  /** Says that the design is drawn, for whoever waits for it. */
  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    const { view, waiting } = this.desk;
    if (view && !waiting) this.setAttribute("data-ready", view.id);
    else this.removeAttribute("data-ready");
  }

  private places(): TemplateResult {
    if (rooms.length === 1) return html`<h1>${this.room.title}</h1>`;
    return html`<nav aria-label="Questions">
      ${rooms.map((room) =>
        room === this.room
          ? html`<h1><a href=${this.desk.address(this.desk.chosen, room.id)} aria-current="page">${room.title}</a></h1>`
          : html`<a href=${this.desk.address(this.desk.chosen, room.id)}>${room.title}</a>`,
      )}
    </nav>`;
  }

  private refusal(): TemplateResult {
    return html`<pre class="problem" role="alert">${this.desk.problem}</pre>
      <button type="button" class="again" @click=${() => void this.desk.begin()}>Read it again</button>`;
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
