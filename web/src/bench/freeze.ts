import { html, type TemplateResult } from "lit";
import type { Since } from "../core/api.js";
import { BenchPart } from "./part.js";
import { words } from "./state.js";

/** Freezes the chosen design as it stands, with a note; says what has changed since the last revision. */
class BenchFreeze extends BenchPart {
  static override properties = { ...BenchPart.properties, problem: { state: true } };

  private problem = "";

  protected override render(): TemplateResult {
    const since = this.bench.view?.since;
    if (!since) return html``;
    if (since.number > 0 && since.changed.length === 0) {
      return html`<p class="since">Nothing has changed since revision ${since.number} was frozen.</p>`;
    }
    return html`<section class="freeze">
      ${since.number === 0
        ? html`<p class="since">Nothing of this design is frozen yet. Freeze it before you cut: tries, times and pieces belong to
            a revision.</p>`
        : html`<h3>Changed since revision ${since.number}</h3>
            <ul class="since changes-since">
              ${since.changed.map((line) => html`<li class=${line.startsWith(" ") ? "value" : ""}>${line.trim()}</li>`)}
            </ul>`}
      <form class="bench-form" @submit=${this.freeze}>
        <label class="wide">Note <input class="freeze-note" maxlength="500" placeholder="what this one is to try" /></label>
        <button class="apply">Freeze it as revision ${since.number + 1}</button>
      </form>
      ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""}
    </section>`;
  }

  private readonly freeze = async (event: Event): Promise<void> => {
    event.preventDefault();
    try {
      await this.bench.post<Since>("/api/bench/freeze", { design: this.bench.design, note: this.text(".freeze-note") });
      this.problem = "";
    } catch (e) {
      this.problem = words(e);
    }
  };
}

customElements.define("bench-freeze", BenchFreeze);
