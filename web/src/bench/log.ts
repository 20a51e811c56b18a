import { html, type TemplateResult } from "lit";
import type { LoggedEntry, TakenIn } from "../core/api.js";
import { BenchPart } from "./part.js";
import { many } from "../core/words.js";
import { clock, day } from "./words.js";

const KINDS = ["pieces", "happenings", "takings", "trials", "timings", "measured", "predictions"];

/** Every entry, to be struck with a reason; CSV out and in. */
class BenchLogPart extends BenchPart {
  static override properties = { ...BenchPart.properties, striking: { state: true } };

  private striking = "";
  private problem = "";
  private taken = "";

  protected override render(): TemplateResult {
    const { view } = this.bench;
    if (!view) return html``;
    return html`
      <section>
        <h2>Entries</h2>
        <p class="small">An entry that is wrong is struck, with the reason, and counts no more. Nothing is ever deleted.</p>
        ${view.entries.length === 0 ? html`<p>Nothing is logged yet.</p>` : ""}
        <ul class="entries">
          ${view.entries.map((entry) => this.entry(entry))}
        </ul>
        ${view.older > 0 ? html`<p class="small">${view.older} older ones are in the CSV files.</p>` : ""}
      </section>
      <section class="csv">
        <h2>CSV</h2>
        <p>Out, what counts of all designs: ${KINDS.map((kind) => html`<a href="/api/bench/csv/${kind}" download>${kind}</a> `)}</p>
        <p>
          <label
            >In, a file by the name of its kind
            <input type="file" class="csv-file" accept=".csv,text/csv" @change=${this.bring}
          /></label>
        </p>
        <p class="small">
          All of it or nothing. Columns are those of the files above, in any order; the same file again logs nothing twice.
        </p>
        <p role="status" class="taken-in">${this.taken}</p>
        ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""}
      </section>
    `;
  }

  private entry(entry: LoggedEntry): TemplateResult {
    const id = `${entry.kind}-${entry.number}`;
    const struck = entry.struck !== null;
    return html`<li class=${struck ? "struck" : ""} data-kind=${entry.kind} data-key=${entry.key}>
      <span class="small">${day(entry.at)}, ${clock(entry.at)}</span>
      <span class="entry-words">${struck ? html`<s>${entry.words}</s>` : entry.words}${entry.note ? ` “${entry.note}”` : ""}</span>
      ${struck
        ? html`<span class="small why">struck: ${entry.struck}</span>`
        : this.striking === id
          ? html`<form class="bench-form" @submit=${(e: Event) => this.strike(e, entry)}>
              <label class="wide">Why does it not count? <input class="strike-why" maxlength="500" required /></label>
              <button class="apply">Strike it</button>
              <button type="button" @click=${() => (this.striking = "")}>Leave it</button>
            </form>`
          : html`<button type="button" class="plain strike" aria-label="Strike ${entry.words}" @click=${() => this.begin(id)}>Strike</button>`}
    </li>`;
  }

  private async begin(id: string): Promise<void> {
    this.striking = id;
    await this.updateComplete;
    this.querySelector<HTMLInputElement>(".strike-why")?.focus();
  }

  private strike(event: Event, entry: LoggedEntry): void {
    event.preventDefault();
    this.bench.strike(entry.kind, entry.key, this.text(".strike-why"));
    this.striking = "";
  }

  private readonly bring = async (event: Event): Promise<void> => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    this.taken = this.problem = "";
    try {
      const response = await fetch(`/api/bench/csv?${new URLSearchParams({ file: file.name })}`, { method: "POST", body: file });
      if (response.ok) {
        const { added, already } = (await response.json()) as TakenIn;
        this.taken = `${many(added, "entry", "entries")} came in${already > 0 ? `; ${already} were there already` : ""}.`;
        await this.bench.fetch();
      } else {
        const { problem, remedy } = (await response.json()) as { problem: string; remedy: string };
        this.problem = `${problem}\n${remedy}`;
      }
    } catch {
      this.problem = "Jackwork does not answer; nothing came in. Choose the file again when it does.";
    }
    input.value = "";
    this.requestUpdate();
  };
}

customElements.define("bench-log", BenchLogPart);
