import { html, type TemplateResult } from "lit";
import type { Frozen } from "../core/api.js";
import "./freeze.js";
import { BenchPart } from "./part.js";
import "./scores.js";
import { many } from "../core/words.js";

/** The coin chosen last, design by design. */
const COIN = "jackwork-bench-coin-";

/** Logs tries with as few touches as can be: the coin stays chosen, one touch for a good one, two for a failure. */
class BenchTries extends BenchPart {
  static override properties = { ...BenchPart.properties, failing: { state: true } };

  private number = 0;
  private coin = "";
  private piece = "";
  private at = 1;
  /** How many failed at what, while that is being said; null otherwise. */
  private failing: Record<string, number> | null = null;
  private last: { id: string; words: string } | null = null;

  private get revisions(): Frozen[] {
    return this.bench.view?.revisions ?? [];
  }

  private get revision(): Frozen | undefined {
    return this.revisions.find(({ number }) => number === this.number) ?? this.revisions.at(-1);
  }

  protected override render(): TemplateResult {
    const { view } = this.bench;
    if (!view) return html``;
    if (view.design === "") {
      const last = view.designs.map(({ id, frozen }) => view.revisions.find((r) => r.design === id && r.number === frozen));
      return html`${last.map((revision) => (revision ? this.scores(revision, true) : ""))}
      ${view.revisions.length === 0 ? html`<p>No design is frozen yet.</p>` : ""}`;
    }
    const { revision } = this;
    if (!revision) return html`<bench-freeze .bench=${this.bench}></bench-freeze>`;
    return html`<div class="tries-and-scores">
      <section class="trying" aria-labelledby="trying">
        <h2 id="trying">Try it</h2>
        ${this.which(revision)} ${this.failing ? this.causes(revision, this.failing) : this.buttons(revision)}
      </section>
      ${this.scores(revision, false)}
    </div>`;
  }

  private scores(revision: Frozen, titled: boolean): TemplateResult {
    return html`<bench-scores .bench=${this.bench} .revision=${revision} .titled=${titled}></bench-scores>`;
  }

  private which(revision: Frozen): TemplateResult {
    const pieces = (this.bench.view?.pieces ?? []).filter((piece) => piece.revision === revision.number);
    const chosen = this.chosenCoin(revision);
    const others = (this.bench.view?.choices.coins ?? []).filter((coin) => !revision.coins.includes(coin));
    return html`<div class="bench-form">
        ${this.revisions.length > 1
          ? html`<label
              >Revision
              <select class="trial-revision" @change=${this.choose("number")}>
                ${this.revisions.map(
                  ({ number }) => html`<option value=${number} .selected=${number === revision.number}>${number}</option>`,
                )}
              </select></label
            >`
          : ""}
        ${pieces.length > 0
          ? html`<label
              >Piece
              <select class="trial-piece" @change=${this.choose("piece")}>
                <option value="">none in particular</option>
                ${pieces.map(
                  ({ serial }) => html`<option value=${serial} .selected=${serial === this.piece}>${serial}</option>`,
                )}
              </select></label
            >`
          : ""}
        <label
          >Tries at once
          <input class="trial-count" type="number" inputmode="numeric" min="1" max="10000" .value=${String(this.at)} @change=${this.count}
        /></label>
      </div>
      <div class="coin-row" role="group" aria-label="Coin">
        ${revision.coins.map(
          (coin) =>
            html`<button type="button" aria-pressed=${coin === chosen} @click=${() => this.take(coin)}>${coin}</button>`,
        )}
        <select aria-label="Another coin" @change=${(e: Event) => this.take((e.target as HTMLSelectElement).value)}>
          <option value="" .selected=${revision.coins.includes(chosen)}>another</option>
          ${others.map((coin) => html`<option value=${coin} .selected=${coin === chosen}>${coin}</option>`)}
        </select>
      </div>`;
  }

  private buttons(revision: Frozen): TemplateResult {
    const several = this.at > 1;
    return html`<div class="thumb">
        <button type="button" class="worked" @click=${() => this.tried(revision, {})}>
          ${several ? `All ${this.at} worked` : "It worked"}
        </button>
        <button type="button" class="failed" @click=${() => (this.failing = {})}>${several ? "Some failed" : "It failed"}</button>
      </div>
      ${this.last
        ? html`<p class="last-logged">
            ${this.last.words} <button type="button" class="plain take-back" @click=${this.takeBack}>Take it back</button>
          </p>`
        : ""}`;
  }

  /** What went wrong: with one try a touch logs it, with several a touch counts one. */
  private causes(revision: Frozen, failing: Record<string, number>): TemplateResult {
    const causes = this.bench.view?.choices.causes ?? [];
    const failed = Object.values(failing).reduce((sum, count) => sum + count, 0);
    const several = this.at > 1;
    return html`<h3>What went wrong first, with ${this.chosenCoin(revision)}?</h3>
      <div class="causes">
        ${causes.map(({ cause, words }) => {
          const count = failing[cause] ?? 0;
          return html`<button
            type="button"
            data-cause=${cause}
            ?disabled=${several && failed >= this.at}
            @click=${() => (several ? this.one(cause) : this.tried(revision, { [cause]: 1 }))}
          >
            ${words}${count > 0 ? html` <strong>${count}</strong>` : ""}
          </button>`;
        })}
      </div>
      <p class="buttons">
        ${several
          ? html`<button type="button" class="apply log-failed" ?disabled=${failed === 0} @click=${() => this.tried(revision, failing)}>
                Log ${this.at} tries, ${failed} failed
              </button>
              <button type="button" ?disabled=${failed === 0} @click=${() => (this.failing = {})}>Count anew</button>`
          : ""}
        <button type="button" @click=${() => (this.failing = null)}>Back</button>
      </p>`;
  }

  private one(cause: string): void {
    this.failing = { ...this.failing, [cause]: (this.failing?.[cause] ?? 0) + 1 };
  }

  private tried(revision: Frozen, failing: Record<string, number>): void {
    const coin = this.chosenCoin(revision);
    const causes = Object.entries(failing);
    const failed = causes.reduce((sum, [, count]) => sum + count, 0);
    const id = this.bench.log("trials", {
      design: revision.design,
      revision: String(revision.number),
      piece: this.piece,
      coin,
      tries: String(this.at),
      failures: causes.map(([cause, count]) => `${cause}=${count}`).join(";"),
    });
    const passed = this.at - failed;
    this.last = { id, words: `${many(this.at, "try", "tries")} with ${coin}: ${passed} worked.` };
    this.failing = null;
    this.requestUpdate();
  }

  private readonly takeBack = (): void => {
    if (this.last) this.bench.takeBack("trials", this.last.id);
    this.last = null;
    this.requestUpdate();
  };

  private chosenCoin(revision: Frozen): string {
    const kept = this.coin || (localStorage.getItem(COIN + revision.design) ?? "");
    return (this.bench.view?.choices.coins ?? []).includes(kept) ? kept : (revision.coins[0] ?? "EUR-1");
  }

  private take(coin: string): void {
    if (coin === "") return;
    this.coin = coin;
    localStorage.setItem(COIN + (this.bench.view?.design ?? ""), coin);
    this.requestUpdate();
  }

  private choose(what: "number" | "piece") {
    return (event: Event): void => {
      const { value } = event.target as HTMLSelectElement;
      if (what === "number") {
        this.number = Number(value);
        this.piece = "";
      } else this.piece = value;
      this.requestUpdate();
    };
  }

  private readonly count = (event: Event): void => {
    const value = Math.round(Number((event.target as HTMLInputElement).value));
    this.at = value >= 1 && value <= 10_000 ? value : 1;
    this.failing = null;
    this.requestUpdate();
  };
}

customElements.define("bench-tries", BenchTries);
