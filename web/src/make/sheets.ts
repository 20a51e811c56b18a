import { html, LitElement, type PropertyValues, svg, type TemplateResult } from "lit";
import { designPath, type JobView, type MakeSheets, type MakeView, type SheetLaid } from "../core/api.js";
import { Following } from "../core/jobs.js";
import type { Source } from "./making.js";
import { type SheetPicture, sheetPicture } from "./sheet-drawing.js";
import { lengthsShown } from "../core/units.js";

const SEARCHES: [number, string][] = [
  [10, "for 10 seconds"],
  [60, "for a minute"],
  [300, "for 5 minutes"],
];

/** Sheets to scale, with every line that the laser goes. Tells that they are laid out anew as an event `laid`. */
class MakeSheetsShown extends LitElement {
  static override properties = {
    source: { attribute: false },
    view: { attribute: false },
    laid: { attribute: false },
    problem: { type: String },
    old: { type: Boolean },
    pointed: { type: String },
    chosen: { state: true },
  };

  source: Source | null = null;
  view: MakeView | null = null;
  laid: MakeSheets | null = null;
  problem = "";
  /** Whether newer ones are on their way. */
  old = false;
  /** A part that is spoken of elsewhere. */
  pointed = "";
  private readonly work = new Following(this);
  /** The piece under the pointer or the focus, and the sheet that it is on. */
  private chosen: { sheet: string; piece: string } | null = null;
  private seconds = SEARCHES[0]?.[0] ?? 10;
  private pictures = new Map<string, SheetPicture>();
  private told = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("laid") && this.laid) {
      this.chosen = null;
      this.pictures = new Map(
        this.laid.sheets.map((sheet) => [
          sheet.name,
          sheetPicture(sheet.svg, `on-${sheet.name}`, [sheet.offcutWidth, sheet.offcutHeight]),
        ]),
      );
      if (!this.laid.laid && !this.work.running) this.begin(0);
    }
    if (changed.has("source") && this.work.job && !this.work.running) this.work.forget();
    const { job } = this.work;
    if (job && job.state === "done" && job.number !== this.told) {
      this.told = job.number;
      this.dispatchEvent(new CustomEvent("laid"));
    }
  }

  protected override updated(): void {
    for (const [name, { pieces }] of this.pictures) {
      for (const { name: piece, shape } of pieces) {
        const here = this.chosen?.sheet === name && this.chosen.piece === piece;
        shape.classList.toggle("chosen", here);
        shape.classList.toggle("pointed", this.pointed !== "" && plain(piece) === this.pointed);
        shape.setAttribute("aria-selected", String(here));
      }
    }
  }

  protected override render(): TemplateResult {
    const sheets = this.laid?.sheets ?? [];
    const minutes = sheets.reduce((sum, sheet) => sum + sheet.minutes, 0);
    return html`<section class=${this.old ? "sheets old" : "sheets"} aria-busy=${this.old} aria-labelledby="sheets-title">
      <h2 id="sheets-title">Sheets</h2>
      ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""}
      ${sheets.length > 0
        ? html`<p>
            ${sheets.length === 1 ? "One sheet" : `${sheets.length} sheets`}, about ${Math.ceil(minutes)} min at the laser.
          </p>`
        : this.problem
          ? ""
          : html`<p class="waiting" role="status">Laying out the sheets …</p>`}
      ${this.search(sheets.length > 0)} ${sheets.length > 0 ? legend() : ""}
      <div class="sheet-list">${sheets.map((sheet) => this.sheet(sheet))}</div>
    </section>`;
  }

  private sheet(sheet: SheetLaid): TemplateResult {
    const picture = this.pictures.get(sheet.name);
    if (!picture) return html``;
    const id = `caption-${sheet.name}`;
    const here = this.chosen?.sheet === sheet.name ? this.chosen.piece : "";
    return html`<figure class="laid-sheet" data-sheet=${sheet.name}>
      <h3>${sheet.stock}, sheet ${sheet.number}</h3>
      <div
        class="sheet-frame"
        role="listbox"
        tabindex="0"
        aria-label=${`Pieces on ${sheet.stock}, sheet ${sheet.number}; arrow keys go from piece to piece`}
        aria-activedescendant=${here ? `on-${sheet.name}-${here}` : ""}
        @pointermove=${(event: PointerEvent) => this.point(sheet, event)}
        @pointerdown=${(event: PointerEvent) => this.point(sheet, event)}
        @pointerleave=${() => (this.chosen = null)}
        @keydown=${(event: KeyboardEvent) => this.key(sheet, picture, event)}
        @blur=${() => (this.chosen = null)}
      >
        ${picture.svg}
      </div>
      <figcaption id=${id}>
        <p class="piece-name">${here ? this.about(here) : html`<span class="quiet">point at a piece for its name</span>`}</p>
        <p class="quiet">
          Sheet ${lengthsShown([sheet.width, sheet.height])}; an offcut of
          ${lengthsShown([Math.ceil(sheet.offcutWidth), Math.ceil(sheet.offcutHeight)])} will do, dotted here. About
          ${sheet.minutes.toFixed(0)} min at the laser: ${lengthsShown([sheet.cut])} to cut, ${lengthsShown([sheet.engrave])}
          to engrave. ${Math.round(100 * sheet.share)} % of the sheet becomes pieces.
        </p>
      </figcaption>
    </figure>`;
  }

  private about(piece: string): TemplateResult {
    const part = this.view?.stack.find(({ part }) => part.name === piece || part.name === plain(piece));
    return html`<strong>${piece}</strong>${part ? `, layer ${part.part.layer} of the ${part.part.ofBox ? "box" : "figure"}` : ""}`;
  }

  private point(sheet: SheetLaid, event: PointerEvent): void {
    const piece = (event.target as Element).getAttribute("data-piece");
    if (piece) this.chosen = { sheet: sheet.name, piece };
    else this.chosen = null;
  }

  private key(sheet: SheetLaid, { pieces }: SheetPicture, event: KeyboardEvent): void {
    const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    const at = pieces.findIndex(({ name }) => this.chosen?.sheet === sheet.name && name === this.chosen.piece);
    let next = by === undefined ? -1 : at < 0 ? (by > 0 ? 0 : pieces.length - 1) : at + by;
    if (event.key === "Home") next = 0;
    if (event.key === "End") next = pieces.length - 1;
    const piece = pieces[next];
    if (!piece) return;
    event.preventDefault();
    this.chosen = { sheet: sheet.name, piece: piece.name };
  }

  private search(any: boolean): TemplateResult {
    const { job, running, problem } = this.work;
    return html`<div class="tighter">
      ${running && job
        ? html`${progress(job)}
            <button type="button" class="stop" @click=${() => void this.work.stop()}>Take the best so far</button>`
        : any
          ? html`<button type="button" class="look-tighter" @click=${() => this.begin(this.seconds)}>Look for tighter sheets</button>
              <label
                ><span class="unseen">how long</span>
                <select class="how-long" @change=${(e: Event) => (this.seconds = Number((e.target as HTMLSelectElement).value))}>
                  ${SEARCHES.map(([seconds, words]) => html`<option value=${seconds} .selected=${seconds === this.seconds}>${words}</option>`)}
                </select></label
              >`
          : ""}
      ${!running && job?.state === "done"
        ? html`<p class="quiet" role="status">${job.lines[job.lines.length - 1] ?? ""}.</p>`
        : ""}
      ${problem ? html`<p class="problem" role="alert">${problem}</p>` : ""}
    </div>`;
  }

  private begin(seconds: number): void {
    if (!this.source) return;
    void this.work.begin(designPath(this.source.id, "lay"), { making: this.source.making, seconds });
  }
}

/** Copies are numbered after a dash. */
const plain = (piece: string): string => piece.replace(/-\d+$/, "");

function progress(job: JobView): TemplateResult {
  const last = job.lines[job.lines.length - 1] ?? "";
  return html`<p class="progress">
    ${job.size > 0
      ? html`<progress max=${job.size} value=${Math.min(job.done, job.size)} aria-label="Time used for looking"></progress>`
      : html`<progress aria-label="Laying out the sheets"></progress>`}
    <span>${last || "laying out"}</span>
  </p>`;
}

function legend(): TemplateResult {
  const line = (kind: string, words: string): TemplateResult =>
    html`<li>
      <svg class="legend-line" viewBox="0 0 40 8" aria-hidden="true">${svg`<g class=${`cut-${kind}`}><path d="M2 4H38"></path></g>`}</svg>
      ${words}
    </li>`;
  return html`<ul class="legend" aria-label="Lines">
    ${line("engrave", "engraved first")} ${line("inside-cuts", "then cut inside")} ${line("outside-cuts", "then cut out")}
    <li class="about">Colours here are the page's; the file has those of My workshop.</li>
  </ul>`;
}

customElements.define("jackwork-sheets", MakeSheetsShown);
