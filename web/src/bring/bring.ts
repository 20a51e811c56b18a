import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { designPath, type DesignView, get, type Grounds, type Made, post, type Starts, type Workshop } from "../core/api.js";
import "./new.js";
import "./redraw.js";
import type { Desk } from "../core/desk.js";

type Showing = "starts" | "which" | "new" | "redraw";

const SVG = /\.svg$/i;

/** The way to a new design: a drawing or picture dropped anywhere on the page, or something to begin from. */
class Bring extends LitElement {
  static override properties = {
    desk: { attribute: false },
    showing: { state: true },
    problem: { state: true },
    waiting: { state: true },
  };

  desk: Desk | null = null;
  private showing: Showing = "starts";
  private problem = "";
  private file: File | null = null;
  /** Another file, dropped while one is being brought in. */
  private waiting: File | null = null;
  /** Which of the files brought in so far this is. */
  private turn = 0;
  private starts: Starts | null = null;
  private grounds: Grounds | null = null;
  private from = "";
  private named = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("dragover", this.over);
    window.addEventListener("drop", this.drop);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("dragover", this.over);
    window.removeEventListener("drop", this.drop);
  }

  private readonly over = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes("Files")) event.preventDefault();
  };

  private readonly drop = (event: DragEvent): void => {
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    this.open();
    this.offer(file);
  };

  private get dialog(): HTMLDialogElement | null {
    return this.querySelector("dialog");
  }

  /** What was begun and closed is there again as it was left. */
  private open(): void {
    if (this.dialog?.open) return;
    this.dialog?.showModal();
    if (!this.begun) void this.fetchStarts();
  }

  /** Whether a file is being brought in. */
  private get begun(): boolean {
    return this.showing !== "starts";
  }

  private beginAnew(): void {
    this.showing = "starts";
    this.file = this.waiting = null;
    void this.fetchStarts();
  }

  /** What is begun is not put away for another file without a question. */
  private offer(file: File): void {
    if (this.begun) this.waiting = file;
    else this.take(file);
  }

  private async fetchStarts(): Promise<void> {
    try {
      this.problem = "";
      [this.starts, this.grounds] = await Promise.all([get<Starts>("/api/starts"), get<Grounds>("/api/grounds")]);
      this.requestUpdate();
    } catch (e) {
      this.problem = e instanceof Error ? e.message : String(e);
    }
  }

  /** A drawing may be a new design or the open one drawn again; a picture is always new. */
  private take(file: File): void {
    this.file = file;
    this.waiting = null;
    this.turn += 1;
    this.showing = SVG.test(file.name) && this.desk?.view ? "which" : "new";
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    if (changed.has("showing")) this.querySelector<HTMLElement>("dialog h2")?.focus();
  }

  protected override render(): TemplateResult {
    return html`<button type="button" class="open-bring" @click=${() => this.open()}>
        ${this.begun && this.file ? `Go on with ${this.file.name}` : "New design or drawing"}
      </button>
      <dialog class="bring" aria-label="New design or drawing" @close=${() => this.requestUpdate()}>
        <div class="bring-head">
          <h2 tabindex="-1">${this.heading}</h2>
          <span class="buttons">
            ${this.begun ? html`<button type="button" class="plain anew" @click=${() => this.beginAnew()}>Begin with something else</button>` : ""}
            <button type="button" class="plain close" @click=${() => this.dialog?.close()}>
              ${this.begun ? "Close, and go on later" : "Close"}
            </button>
          </span>
        </div>
        ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""} ${this.question()}
        <div ?hidden=${this.waiting !== null}>${keyed(this.turn, this.shown())}</div>
      </dialog>`;
  }

  private question(): TemplateResult | string {
    const { waiting } = this;
    if (!waiting) return "";
    return html`<p class="say">${this.file?.name ?? "A drawing"} is still being brought in.</p>
      <p class="buttons">
        <button type="button" class="apply go-on" @click=${() => (this.waiting = null)}>Go on with it</button>
        <button type="button" class="instead" @click=${() => this.take(waiting)}>Put it away, and begin with ${waiting.name}</button>
      </p>`;
  }

  private get heading(): string {
    if (this.showing === "redraw") return `${this.desk?.view?.scene.name ?? ""}, drawn again`;
    return this.showing === "starts" ? "New design" : (this.file?.name ?? "New design");
  }

  private shown(): TemplateResult {
    const done = (id: string): void => void this.show(id);
    switch (this.showing) {
      case "new":
        return html`<jackwork-bring-new .file=${this.file} .done=${done}></jackwork-bring-new>`;
      case "redraw":
        return html`<jackwork-bring-redraw .file=${this.file} .design=${this.desk?.chosen ?? ""} .done=${done}></jackwork-bring-redraw>`;
      case "which":
        return html`<p class="say">Is this a new design, or ${this.desk?.view?.scene.name ?? ""} drawn again?</p>
          <p class="buttons">
            <button type="button" class="apply is-new-design" @click=${() => (this.showing = "new")}>A new design</button>
            <button type="button" class="apply is-redrawn" @click=${() => (this.showing = "redraw")}>
              ${this.desk?.view?.scene.name ?? ""}, drawn again
            </button>
          </p>`;
      default:
        return this.beginnings();
    }
  }

  private beginnings(): TemplateResult {
    return html`<label class="drop-zone"
        ><strong>Drop a drawing or picture here</strong>
        <span>SVG from any drawing program, or PNG</span> <span class="choose">Choose a file</span>
        <input
          type="file"
          accept=".svg,.png,image/svg+xml,image/png"
          @change=${(e: Event) => {
            const file = (e.target as HTMLInputElement).files?.[0];
            if (file) this.take(file);
          }}
      /></label>
      <h3>Or begin from one of these</h3>
      <div class="starts">${this.starts?.starts.map((start) => this.start(start.id, start.name, start.words)) ?? ""}</div>`;
  }

  private start(id: string, name: string, words: string): TemplateResult {
    const chosen = this.from === id;
    const address = `/api/start-picture/${id.split("/").map(encodeURIComponent).join("/")}`;
    return html`<div class="start ${chosen ? "chosen" : ""}">
      <button
        type="button"
        data-start=${id}
        aria-expanded=${chosen ? "true" : "false"}
        @click=${() => {
          this.from = chosen ? "" : id;
          this.named = `My ${name.toLowerCase()}`.replace(/[^\p{L}\p{N} '_-]/gu, "");
          this.requestUpdate();
        }}
      >
        ${id.startsWith("bare/") ? bareBoard(id.endsWith("bowing")) : html`<img src=${address} alt="" loading="lazy" />`}
        <span>${name}</span>${words ? html`<small>${words}</small>` : ""}
      </button>
      ${chosen
        ? html`<form
            @submit=${(e: Event) => {
              e.preventDefault();
              void this.begin();
            }}
          >
            <label>Name <input class="title" .value=${this.named} @input=${(e: Event) => (this.named = (e.target as HTMLInputElement).value)} /></label>
            <button type="submit" class="apply">Begin</button>
          </form>`
        : ""}
    </div>`;
  }

  private async begin(): Promise<void> {
    try {
      this.problem = "";
      const made = await post<Made>("/api/begin", { from: this.from, name: this.named.trim(), box: this.grounds?.boxes[0]?.id ?? "" });
      await this.show(made.id);
    } catch (e) {
      this.problem = e instanceof Error ? e.message : String(e);
    }
  }

  /** Closes the dialogue and lays the design on the desk, as it is now. */
  private async show(id: string): Promise<void> {
    const { desk } = this;
    if (!desk) return;
    this.dialog?.close();
    this.from = "";
    this.showing = "starts";
    this.file = this.waiting = null;
    desk.workshop = await get<Workshop>("/api/workshop");
    if (id === desk.chosen) desk.show(await get<DesignView>(designPath(id)));
    else location.hash = desk.address(id, "");
    desk.changed();
  }
}

/** A bare board on its post, as a sign for it. */
const bareBoard = (turned: boolean): TemplateResult => html`<svg class=${turned ? "turned" : ""} viewBox="0 0 120 90" aria-hidden="true">
  <path class="of-box" d="M20 80h80v-14H20z M54 66h12V30H54z"></path>
  <path class="outline is-part" d="M18 26a10 10 0 0 1 3-11l70 6a10 10 0 0 1-1 18z"></path>
  <circle class="mark" cx="60" cy="29" r="2.5"></circle>
</svg>`;

customElements.define("jackwork-bring", Bring);

/** The way to bring in a drawing, offered beside the choice of designs; null while there is none. */
export const bring: ((desk: Desk) => TemplateResult) | null = (desk) => html`<jackwork-bring .desk=${desk}></jackwork-bring>`;
