import { html, type TemplateResult } from "lit";
import { designPath, type DesignView, get, type UseEffect, type UseView } from "../core/api.js";
import { movedFindings } from "./compare.js";
import { BenchPart } from "./part.js";
import { words } from "./state.js";
import { many, verdictWords } from "../core/words.js";
import { thingWords, valueWords } from "./words.js";
import type { Desk } from "../core/desk.js";

/** Measured values into workshop.yaml: first what that changes, and what it does to every design; then it is written. */
class BenchUse extends BenchPart {
  static override properties = { ...BenchPart.properties, desk: { attribute: false }, use: { state: true } };

  desk!: Desk;
  private use: UseView | null = null;
  private effects: UseEffect[] = [];
  private readonly left = new Set<string>();
  private asking = false;
  private problem = "";
  private done = "";

  protected override render(): TemplateResult {
    const ready = (this.bench.view?.measured ?? []).filter(({ value }) => value !== null);
    if (ready.length === 0) return html``;
    return html`<section class="use" aria-labelledby="use">
      <h2 id="use">Use these values</h2>
      <div class="use-choice">
        ${ready.map(
          (thing) => html`<label class="check"
            ><input
              type="checkbox"
              .checked=${!this.left.has(thing.name)}
              data-use=${thing.name}
              @change=${() => this.toggle(thing.name)}
            />
            ${thingWords(thing)}</label
          >`,
        )}
      </div>
      <p class="buttons">
        <button type="button" class="see-use" ?disabled=${this.asking || this.left.size === ready.length} @click=${this.see}>
          See what they would change
        </button>
        ${this.asking ? html`<button type="button" class="stop" @click=${this.stop}>Stop</button>` : ""}
      </p>
      ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""} ${this.use ? this.changes(this.use) : ""}
      <p role="status" class="used-words">${this.done}</p>
    </section>`;
  }

  private toggle(name: string): void {
    if (!this.left.delete(name)) this.left.add(name);
    this.use = null;
    this.requestUpdate();
  }

  private called(name: string): string {
    const thing = this.bench.view?.measured.find((each) => each.name === name);
    return thing ? thingWords(thing) : name;
  }

  private get wanted(): string[] {
    return (this.bench.view?.measured ?? []).filter(({ name, value }) => value && !this.left.has(name)).map(({ name }) => name);
  }

  private readonly see = async (): Promise<void> => {
    this.asking = true;
    this.problem = this.done = "";
    this.effects = [];
    this.use = null;
    const { wanted } = this;
    const what = wanted.join(" ");
    try {
      const use = await get<UseView>(`/api/bench/use?${new URLSearchParams({ what })}`);
      this.use = use;
      for (const design of use.designs) {
        if (!this.asking) break;
        const effect = await get<UseEffect>(`/api/bench/effect?${new URLSearchParams({ what, design })}`);
        if (this.use !== use) break;
        this.effects = [...this.effects, effect];
        this.requestUpdate();
      }
    } catch (e) {
      this.problem = words(e);
    }
    this.asking = false;
    this.requestUpdate();
  };

  private readonly stop = (): void => {
    this.asking = false;
    this.requestUpdate();
  };

  private changes(use: UseView): TemplateResult {
    return html`
      ${use.skipped.map(({ name, why }) => html`<p>${this.called(name)}: not used, ${why}</p>`)}
      ${use.changes.length === 0
        ? html`<p>My workshop says all this already.</p>`
        : html`<h3>In My workshop</h3>
            <ul class="changed-values">
              ${use.values.map(({ name, value }) => html`<li>${this.called(name)}: ${valueWords(value)}</li>`)}
            </ul>
            <details>
              <summary>${many(use.changes.length, "line")} of it</summary>
              <ul class="changed-lines small">
                ${use.changes.map(({ path, before, after }) => html`<li>${path}: ${before || "nothing"} → ${after || "nothing"}</li>`)}
              </ul>
            </details>
            <h3>What that does</h3>
            ${this.asking || this.effects.length < use.designs.length
              ? html`<p class="progress">
                  <progress max=${use.designs.length} value=${this.effects.length} aria-label="Designs checked"></progress>
                  <span>${this.effects.length} of ${many(use.designs.length, "design")} checked</span>
                </p>`
              : ""}
            <div class="effects">${this.effects.map((effect) => this.effect(effect))}</div>
            <p class="buttons">
              <button type="button" class="apply write-use" ?disabled=${this.asking} @click=${() => this.write(use)}>
                Write them into My workshop
              </button>
            </p>`}
    `;
  }

  private effect(effect: UseEffect): TemplateResult {
    const title = this.bench.view?.designs.find(({ id }) => id === effect.design)?.title ?? effect.design;
    if (effect.trouble) return html`<section><h4>${title}</h4><p>Cannot be checked: ${effect.trouble}</p></section>`;
    return html`<section data-design=${effect.design}>
      <h4>
        ${title}: ${effect.then === effect.now ? "still" : html`<span class="verdict-word ${effect.then}">${verdictWords(effect.then)}</span>, then`}
        <span class="verdict-word ${effect.now}">${verdictWords(effect.now)}</span>
      </h4>
      ${movedFindings(effect.moved)}
    </section>`;
  }

  private async write(use: UseView): Promise<void> {
    try {
      await this.bench.post("/api/bench/use", { wanted: this.wanted, text: use.text });
      this.use = null;
      this.done = "Written into My workshop; nothing else of it changed.";
      this.desk.show(await get<DesignView>(designPath(this.desk.chosen)));
    } catch (e) {
      this.problem = words(e);
    }
    this.requestUpdate();
  }
}

customElements.define("bench-use", BenchUse);
