import { html, LitElement, type PropertyValues, svg, type TemplateResult } from "lit";
import { type DesignView, designPath, get, type Playback, type Tray, type TrayCoin } from "../core/api.js";

/** A coin let go so near the slot, px, falls in. */
const NEAR = 60;
/** Moved less than this, px, it was only touched. */
const TOUCHED = 5;

/**
 * Coins to pick from: dragged to the slot, or pressed, one falls in. Tells what came of it as an event `film`, with a
 * {@link Playback}.
 */
class CoinTray extends LitElement {
  static override properties = {
    view: { attribute: false },
    coins: { state: true },
    waiting: { state: true },
    problem: { state: true },
    others: { state: true },
  };

  view: DesignView | null = null;
  private coins: TrayCoin[] = [];
  private held: { coin: TrayCoin; from: [number, number]; by: [number, number] } | null = null;
  private waiting = "";
  private problem = "";
  private others = false;
  private of = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("view") || !this.view) return;
    // The box's coins may be changed in its files while the page is open.
    const of = [this.view.id, ...this.view.report.coins.map(({ coin }) => coin)].join(" ");
    if (of !== this.of) {
      this.of = of;
      void this.fill(this.view.id);
    }
  }

  private async fill(id: string): Promise<void> {
    try {
      this.coins = (await get<Tray>(designPath(id, "tray"))).coins;
    } catch (e) {
      this.problem = e instanceof Error ? e.message : String(e);
    }
  }

  protected override render(): TemplateResult {
    const shown = this.coins.filter((coin) => coin.taken || this.others);
    const more = this.coins.some((coin) => !coin.taken);
    return html`<div class="tray" role="group" aria-label="Coins: drop one into the slot">
      ${shown.map((coin) => this.button(coin))}
      ${more
        ? html`<button type="button" class="plain" aria-expanded=${this.others} @click=${() => (this.others = !this.others)}>
            ${this.others ? "only these" : "other coins"}
          </button>`
        : ""}
      <span class="hint" role="status">${this.problem || (this.waiting ? `${this.waiting} is let go …` : "")}</span>
    </div>`;
  }

  private button(coin: TrayCoin): TemplateResult {
    const size = coin.diameter * 1.9;
    return html`<button
      type="button"
      class="coin-button ${coin.taken ? "" : "not-taken"}"
      data-coin=${coin.code}
      aria-label=${`Drop ${coin.denomination} ${coin.currency}${coin.taken ? "" : ", which the box should not take"}`}
      @pointerdown=${(e: PointerEvent) => this.take(coin, e)}
      @pointermove=${(e: PointerEvent) => this.move(e)}
      @pointerup=${(e: PointerEvent) => this.letGo(e)}
      @pointercancel=${(e: PointerEvent) => this.putBack(e)}
      @click=${(e: MouseEvent) => {
        if (e.detail === 0) void this.drop(coin); // by a key: pointers drop when let go
      }}
    >
      <svg width=${size} height=${size} viewBox="-10 -10 20 20" aria-hidden="true">
        ${svg`<circle r="9.5"></circle><circle class="rim" r="8"></circle>
          <text y="2.4" text-anchor="middle">${short(coin)}</text>`}
      </svg>
    </button>`;
  }

  private take(coin: TrayCoin, event: PointerEvent): void {
    if (event.button !== 0) return;
    this.held = { coin, from: [event.clientX, event.clientY], by: [0, 0] };
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
  }

  private move(event: PointerEvent): void {
    if (!this.held) return;
    const [x, y] = this.held.from;
    const by: [number, number] = [event.clientX - x, event.clientY - y];
    this.held = { ...this.held, by };
    (event.currentTarget as HTMLElement).style.translate = `${by[0]}px ${by[1]}px`;
  }

  private putBack(event: PointerEvent): void {
    this.held = null;
    (event.currentTarget as HTMLElement).style.translate = "";
  }

  private letGo(event: PointerEvent): void {
    const { held } = this;
    this.putBack(event);
    if (!held) return;
    const slot = this.closest("main")?.querySelector("[data-slot]")?.getBoundingClientRect();
    const away = slot
      ? Math.hypot(event.clientX - slot.x - slot.width / 2, event.clientY - slot.y - slot.height / 2)
      : Infinity;
    if (away < NEAR || Math.hypot(...held.by) < TOUCHED) void this.drop(held.coin);
  }

  private async drop(coin: TrayCoin): Promise<void> {
    if (!this.view) return;
    this.problem = "";
    this.waiting = `${coin.denomination} ${coin.currency}`;
    try {
      const film = await get<Playback>(`${designPath(this.view.id, "drop")}?coin=${encodeURIComponent(coin.code)}`);
      this.dispatchEvent(new CustomEvent<Playback>("film", { detail: film, bubbles: true }));
    } catch (e) {
      this.problem = e instanceof Error ? e.message : String(e);
    }
    this.waiting = "";
  }
}

/** What fits on a coin: "50" for 0.50, "2" for 2. */
function short(coin: TrayCoin): string {
  const value = Number(coin.denomination);
  return value < 1 ? String(Math.round(value * 100)) : String(value);
}

customElements.define("jackwork-tray", CoinTray);
