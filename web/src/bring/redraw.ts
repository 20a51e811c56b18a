import { html, LitElement, svg, type TemplateResult } from "lit";
import { designPath, type Grounds, get, type Made, type Pair, post, type Redrawn } from "../core/api.js";
import { send } from "./file.js";
import { plain } from "./model.js";
import { path } from "./sheet.js";

interface Adding {
  name: string;
  stock: string;
  layer: number;
  on: string;
}

const MARGIN = 8;

/** A design's drawing dropped in again: what became of each part is shown, and taken in once the maker agrees. */
class BringRedraw extends LitElement {
  static override properties = { file: { attribute: false }, design: { attribute: false }, found: { state: true } };

  file: File | null = null;
  design = "";
  done: (id: string) => void = () => undefined;

  private found: Redrawn | null = null;
  private grounds: Grounds | null = null;
  private text = "";
  private problem = "";
  private busy = false;
  /** What the maker chose otherwise: keys of outlines by part, empty for none. */
  private readonly parts: Record<string, string> = {};
  private readonly points: Record<string, string> = {};
  private readonly dropped = new Set<string>();
  private readonly added = new Map<string, Adding>();
  private looked = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.read(0);
  }

  private async read(scale: number): Promise<void> {
    const { file } = this;
    if (!file) return;
    await this.try(async () => {
      this.grounds = await get<Grounds>("/api/grounds");
      this.text = await file.text();
      this.found = await send<Redrawn>(designPath(this.design, "redrawn"), file, scale);
    });
  }

  private async try(work: () => Promise<void>): Promise<void> {
    [this.busy, this.problem] = [true, ""];
    this.requestUpdate();
    try {
      await work();
    } catch (e) {
      this.problem = e instanceof Error ? e.message : String(e);
    }
    this.busy = false;
    this.requestUpdate();
  }

  protected override render(): TemplateResult {
    const { found, grounds } = this;
    return html`
      ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""}
      ${this.busy && !found ? html`<p class="waiting" role="status">Looking for what has changed …</p>` : ""}
      ${found && grounds
        ? html`<div class="two">${this.sheet(found)}
            <div class="beside">${this.told(found)} ${this.news(found, grounds)} ${this.buttons(found)}</div></div>`
        : ""}
    `;
  }

  private sheet(found: Redrawn): TemplateResult {
    const rings = [
      ...found.parts.flatMap((p) => [...p.was, ...(p.now ?? [])]),
      ...found.added.flatMap((shape) => shape.rings),
    ];
    const all = rings.flat();
    const least = (of: 0 | 1): number => all.reduce((a, p) => Math.min(a, p[of]), Infinity);
    const most = (of: 0 | 1): number => all.reduce((a, p) => Math.max(a, p[of]), -Infinity);
    const [x, y, width, height] = [least(0), most(1), most(0) - least(0), most(1) - least(1)];
    const dot = Math.max(width, height) / 110;
    return html`<svg class="sheet" viewBox="${x - MARGIN} ${-y - MARGIN} ${width + 2 * MARGIN} ${height + 2 * MARGIN}">
      ${svg`<g transform="scale(1 -1)">
        ${found.parts.map(
          (p) => svg`
            ${p.change === "same" ? "" : svg`<path class="was" d=${path(p.was)}></path>`}
            <path class="outline is-now ${p.change} ${this.looked === p.name ? "chosen" : ""}" data-part=${p.name} d=${path(p.now ?? p.was)}></path>`,
        )}
        ${found.added.map((s) => svg`<path class="outline is-new ${this.looked === s.key ? "chosen" : ""}" data-new=${s.key} d=${path(s.rings)}></path>`)}
        ${found.points.map((p) => this.moved(p.was, p.now, p.change, dot))}
      </g>`}
    </svg>`;
  }

  private moved(was: Pair, now: Pair, change: string, dot: number): TemplateResult {
    return svg`${change === "moved" ? svg`<line class="ruler" x1=${was[0]} y1=${was[1]} x2=${now[0]} y2=${now[1]}></line>` : ""}
      <circle class="at ${change}" cx=${now[0]} cy=${now[1]} r=${dot}></circle>`;
  }

  private told(found: Redrawn): TemplateResult {
    const changed = found.parts.filter((p) => p.change !== "same");
    const points = found.points.filter((p) => p.change === "moved");
    return html`<p class="say">
        ${changed.length + points.length + found.added.length === 0 ? "Nothing has changed." : "This has changed. Joints stay."}
      </p>
      ${found.sharing.length > 0 ? html`<p class="quiet">It is also the figure of: ${found.sharing.join(", ")}.</p>` : ""}
      <ul class="changes">
        ${changed.map(
          (p) => html`<li
            data-changed=${p.name}
            class=${p.change}
            @pointerenter=${() => this.look(p.name)}
            @focusin=${() => this.look(p.name)}
          >
            <strong>${p.name}</strong> ${this.dropped.has(p.name) ? "taken out, with its joints" : p.words}
            ${this.pairing(p.name, p.key, found)}
          </li>`,
        )}
        ${points.map(
          (p) => html`<li data-changed=${p.name} class="moved"><strong>${p.name}</strong> (point) ${p.words} ${this.pointing(p.name, p.key)}</li>`,
        )}
      </ul>
      <p class="quiet">${found.parts.length - changed.length} parts are as they were.</p>`;
  }

  private look(name: string): void {
    this.looked = name;
    this.requestUpdate();
  }

  /** Which outline a part is, when the maker knows better. */
  private pairing(name: string, key: string, found: Redrawn): TemplateResult {
    const chosen = this.dropped.has(name) ? "out" : (this.parts[name] ?? key);
    const choose = (next: string): void => {
      this.dropped.delete(name);
      if (next === "out") this.dropped.add(name);
      else this.parts[name] = next;
      this.requestUpdate();
    };
    return html`<select aria-label=${`${name} is`} @change=${(e: Event) => choose((e.target as HTMLSelectElement).value)}>
      ${key ? html`<option value=${key} .selected=${chosen === key}>as found</option>` : ""}
      <option value="" .selected=${chosen === ""}>as it was before</option>
      ${found.added.map((s, i) => html`<option value=${s.key} .selected=${chosen === s.key}>new outline ${i + 1}</option>`)}
      <option value="out" .selected=${chosen === "out"}>taken out</option>
    </select>`;
  }

  private pointing(name: string, key: string): TemplateResult {
    const chosen = this.points[name] ?? key;
    return html`<select
      aria-label=${`${name} is`}
      @change=${(e: Event) => {
        this.points[name] = (e.target as HTMLSelectElement).value;
        this.requestUpdate();
      }}
    >
      <option value=${key} .selected=${chosen === key}>as found</option>
      <option value="" .selected=${chosen === ""}>goes with its part</option>
    </select>`;
  }

  private news(found: Redrawn, grounds: Grounds): TemplateResult {
    return html`${found.added.map((shape, i) => {
      const adding = this.added.get(shape.key);
      const set = (change: Partial<Adding>): void => {
        if (adding) Object.assign(adding, change);
        this.requestUpdate();
      };
      return html`<div class="panel" @pointerenter=${() => this.look(shape.key)}>
        <label class="check"
          ><input
            type="checkbox"
            .checked=${adding !== undefined}
            @change=${() => {
              if (adding) this.added.delete(shape.key);
              else {
                const on = found.parts[0]?.name ?? "";
                this.added.set(shape.key, { name: `new-${i + 1}`, stock: grounds.sheets[0]?.name ?? "", layer: 5, on });
              }
              this.requestUpdate();
            }}
          />
          New outline ${i + 1} is a part</label
        >
        ${adding
          ? html`<label>Name <input class="name" .value=${adding.name} @change=${(e: Event) => set({ name: plain((e.target as HTMLInputElement).value) || adding.name })} /></label>
              <label
                >Made of
                <select @change=${(e: Event) => set({ stock: (e.target as HTMLSelectElement).value })}>
                  ${grounds.sheets.map((s) => html`<option value=${s.name} .selected=${s.name === adding.stock}>${s.name}</option>`)}
                </select></label
              >
              <label
                >Glued to
                <select @change=${(e: Event) => set({ on: (e.target as HTMLSelectElement).value })}>
                  ${found.parts.map((p) => html`<option value=${p.name} .selected=${p.name === adding.on}>${p.name}</option>`)}
                </select></label
              >
              <label
                >Layer
                <input inputmode="numeric" .value=${String(adding.layer)} @change=${(e: Event) => set({ layer: Math.max(1, Math.round(Number((e.target as HTMLInputElement).value)) || 1) })}
              /></label>`
          : ""}
      </div>`;
    })}`;
  }

  private buttons(found: Redrawn): TemplateResult {
    return html`<p class="buttons">
      <button type="button" class="apply accept" ?disabled=${this.busy} @click=${() => void this.accept(found)}>Take it so</button>
      <span class="quiet">It can be taken back.</span>
    </p>`;
  }

  private async accept(found: Redrawn): Promise<void> {
    await this.try(async () => {
      const made = await post<Made>(designPath(this.design, "redraw"), {
        base: found.version,
        file: this.file?.name ?? "",
        text: this.text,
        scale: found.scale,
        parts: this.parts,
        points: this.points,
        added: [...this.added].map(([key, adding]) => ({ key, ...adding })),
        dropped: [...this.dropped],
      });
      this.done(made.id);
    });
  }
}

customElements.define("jackwork-bring-redraw", BringRedraw);
