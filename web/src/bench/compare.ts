import { html, type PropertyValues, type TemplateResult } from "lit";
import { type Frozen, get, type MovedFinding, type MovedSide, type RevisionPair } from "../core/api.js";
import { BenchPart } from "./part.js";
import { words } from "./state.js";
import { many, verdictWords } from "../core/words.js";
import { fieldUnit, fieldValue, told } from "../core/units.js";

/** The design as it stands, not frozen. */
const NOW = 0;
const MARKS: Record<string, string> = { pass: "✓", open: "○", doubtful: "?", fail: "✗" };

/** Two states of a design beside each other: pictures, numbers, findings. */
class BenchCompare extends BenchPart {
  static override properties = { ...BenchPart.properties, pair: { state: true }, problem: { state: true } };

  private former = -1;
  private latter = -1;
  private pair: RevisionPair | null = null;
  private problem = "";
  /** What the pair was asked for: it is asked again when that is another. */
  private asked = "";

  private get revisions(): Frozen[] {
    return this.bench.view?.revisions ?? [];
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const [before, after] = this.chosen();
    const view = this.bench.view;
    if (!view || before === after) return;
    const asked = JSON.stringify([view.design, before, after, after === NOW ? view.since?.changed : ""]);
    if (asked !== this.asked) {
      this.asked = asked;
      void this.ask(view.design, before, after);
    }
  }

  /** The last two, or the last and what has changed since. */
  private chosen(): [number, number] {
    const numbers = this.revisions.map(({ number }) => number);
    const last = numbers.at(-1) ?? 1;
    const altered = (this.bench.view?.since?.changed.length ?? 0) > 0;
    const after = this.latter === NOW || numbers.includes(this.latter) ? this.latter : altered ? NOW : last;
    const usual = after === NOW ? last : (numbers[numbers.indexOf(after) - 1] ?? after);
    return [numbers.includes(this.former) ? this.former : usual, after];
  }

  private async ask(design: string, before: number, after: number): Promise<void> {
    const { asked } = this;
    this.pair = null;
    this.problem = "";
    try {
      const query = new URLSearchParams({ design, before: String(before), after: String(after) });
      const pair = await get<RevisionPair>(`/api/bench/pair?${query}`);
      if (asked === this.asked) this.pair = pair;
    } catch (e) {
      if (asked === this.asked) this.problem = words(e);
    }
  }

  protected override render(): TemplateResult {
    const [before, after] = this.chosen();
    const there = this.bench.view?.since !== null;
    if (this.revisions.length === 1 && (!there || this.bench.view?.since?.changed.length === 0)) return html``;
    const { pair } = this;
    return html`<section class="beside" aria-labelledby="beside">
      <h2 id="beside">Beside each other</h2>
      <div class="bench-form">
        <label>Before ${this.choice("former", before, false)}</label>
        <label>After ${this.choice("latter", after, there)}</label>
      </div>
      ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""}
      ${before === after
        ? html`<p>Choose two that differ.</p>`
        : pair
          ? this.shown(pair)
          : this.problem
            ? ""
            : html`<p class="waiting" role="status">Working it out …</p>`}
    </section>`;
  }

  private choice(what: "former" | "latter", chosen: number, now: boolean): TemplateResult {
    return html`<select
      class="compare-${what}"
      @change=${(e: Event) => {
        this[what] = Number((e.target as HTMLSelectElement).value);
        this.requestUpdate();
      }}
    >
      ${this.revisions.map(
        ({ number }) => html`<option value=${number} .selected=${number === chosen}>revision ${number}</option>`,
      )}
      ${now ? html`<option value=${NOW} .selected=${chosen === NOW}>as it stands</option>` : ""}
    </select>`;
  }

  private shown(pair: RevisionPair): TemplateResult {
    return html`
      <div class="pair" data-before=${pair.before} data-after=${pair.after}>
        ${this.picture(pair, "before", pair.before, pair.verdictBefore)} ${this.picture(pair, "after", pair.after, pair.verdictAfter)}
      </div>
      ${pair.trouble ? html`<pre class="problem">${pair.trouble}</pre>` : ""}
      <div class="differences">
        <section>
          <h3>Outlines</h3>
          ${pair.parts.length === 0
            ? html`<p>No outline differs.</p>`
            : html`<p class="small">A thick rim and a number mark what differs; a dashed rim is where the other one has it.</p>
                <ol class="changed-parts">
                  ${pair.parts.map(({ part, how }) => html`<li>${part}: ${told(how)}</li>`)}
                </ol>`}
          <h3>Numbers</h3>
          ${pair.files.length === 0 ? html`<p>No file differs.</p>` : ""}
          ${pair.files.map(
            ({ file, how, values }) => html`<p class="changed-file">${file}: ${how}</p>
              ${values.length === 0
                ? ""
                : html`<ul class="changed-values">
                    ${values.map(
                      ({ path, before, after }) =>
                        html`<li>${path.replaceAll(".", " ")}: ${before || "nothing"} → <strong>${after || "nothing"}</strong></li>`,
                    )}
                  </ul>`}`,
          )}
        </section>
        <section>
          <h3>Findings</h3>
          ${movedFindings(pair.findings)}
        </section>
      </div>
    `;
  }

  private picture(pair: RevisionPair, of: "before" | "after", number: number, verdict: string): TemplateResult {
    const { design, before, after } = pair;
    const query = new URLSearchParams({ design, before: String(before), after: String(after), of, as: this.asked });
    const name = number === NOW ? "As it stands" : `Revision ${number}`;
    return html`<figure>
      <img src="/api/bench/picture?${query}" alt="${name}, ${many(pair.parts.length, "part")} marked that differ" />
      <figcaption>${name}${verdict ? html`: <span class="verdict-word ${verdict}">${verdictWords(verdict)}</span>` : ""}</figcaption>
    </figure>`;
  }
}

/** Findings that turned, each then and now; those whose margin alone moved, folded. */
export function movedFindings(all: MovedFinding[]): TemplateResult {
  const turned = all.filter((finding) => finding.turned);
  const moved = all.filter((finding) => !finding.turned);
  return html`
    ${turned.length === 0
      ? html`<p>No finding turns.</p>`
      : html`<ul class="moved-findings">
          ${turned.map(
            ({ question, then, now }) => html`<li>
              ${told(question)}
              <span class="turn">${side(then)} → ${side(now)}</span>
              ${now?.why ? html`<span class="small">${told(now.why)}</span>` : ""}
            </li>`,
          )}
        </ul>`}
    ${moved.length === 0
      ? ""
      : html`<details>
          <summary>${many(moved.length, "margin")} moved</summary>
          <ul class="moved-margins small">
            ${moved.map(({ question, then, now }) => html`<li>${told(question)} ${margin(then)} → ${margin(now)}</li>`)}
          </ul>
        </details>`}
  `;
}

function side(of: MovedSide | null): TemplateResult {
  if (!of) return html`not asked`;
  return html`<span class="status ${of.status}">${MARKS[of.status] ?? ""} ${of.status}</span>`;
}

function margin(of: MovedSide | null): string {
  if (of?.margin == null) return "not known";
  return `${fieldValue(of.margin, of.unit)} ${fieldUnit(of.unit)}`.trim();
}

customElements.define("bench-compare", BenchCompare);
