import { html, type TemplateResult } from "lit";
import type { BenchView, MadePiece } from "../core/api.js";
import "./freeze.js";
import { BenchPart } from "./part.js";
import { many } from "../core/words.js";
import { day, plain, sums } from "./words.js";

interface Happening {
  what: string;
  title: string;
  /** What its field asks for; empty when it asks nothing. */
  who: string;
  needed: boolean;
  money: boolean;
}

const HAPPENINGS: Happening[] = [
  { what: "sold", title: "Sold", who: "To", needed: true, money: true },
  { what: "lent", title: "Lent", who: "To", needed: true, money: false },
  { what: "placed", title: "Placed", who: "Where", needed: true, money: false },
  { what: "returned", title: "Came back", who: "", needed: false, money: false },
  { what: "stock", title: "Put in stock", who: "", needed: false, money: false },
  { what: "repaired", title: "Repaired", who: "By", needed: false, money: false },
  { what: "spare", title: "A part made again", who: "Part", needed: true, money: false },
  { what: "scrapped", title: "Scrapped", who: "", needed: false, money: false },
];

const TAKINGS = "takings";

const WHERE: Record<string, string> = {
  stock: "in stock",
  sold: "sold to",
  lent: "lent to",
  placed: "placed at",
  returned: "came back, in stock",
  scrapped: "scrapped",
};

/** The pieces that were made: where each is, what became of it, what it took in. */
class BenchPieces extends BenchPart {
  static override properties = { ...BenchPart.properties, open: { state: true }, doing: { state: true } };

  /** The piece that something is being logged of. */
  private open = "";
  private doing = "sold";

  protected override render(): TemplateResult {
    const { view } = this.bench;
    if (!view) return html``;
    return html`
      ${view.design === "" ? "" : this.adding(view)}
      <section>
        <h2>Pieces</h2>
        ${view.pieces.length === 0
          ? html`<p>No piece is logged yet${view.design === "" ? "; choose a design above to log one" : ""}.</p>`
          : html`<table class="pieces-table">
                <thead>
                  <tr>
                    <th scope="col">Serial</th>
                    <th scope="col">Revision</th>
                    <th scope="col">Batch</th>
                    <th scope="col">Where it is</th>
                    <th scope="col">Taken in</th>
                    <th scope="col"><span class="unseen">Log what happened</span></th>
                  </tr>
                </thead>
                <tbody>
                  ${view.pieces.map((piece) => this.row(piece, view))}
                </tbody>
              </table>
              ${this.totals(view)}`}
      </section>
    `;
  }

  private adding(view: BenchView): TemplateResult {
    if (view.revisions.length === 0) return html`<bench-freeze .bench=${this.bench}></bench-freeze>`;
    return html`<section>
      <h2>A piece is made</h2>
      <form class="bench-form" @submit=${(e: Event) => this.add(e, view.design)}>
        <label>Serial <input class="piece-serial" maxlength="40" required /></label>
        <label
          >Revision
          <select class="piece-revision">
            ${[...view.revisions].reverse().map(({ number }) => html`<option>${number}</option>`)}
          </select></label
        >
        <label>Batch <input class="piece-batch" maxlength="80" /></label>
        <button class="apply">Log it</button>
      </form>
    </section>`;
  }

  private add(event: Event, design: string): void {
    event.preventDefault();
    this.bench.log("pieces", {
      serial: this.text(".piece-serial"),
      design,
      revision: this.text(".piece-revision"),
      batch: this.text(".piece-batch"),
    });
    this.empty(".piece-serial");
  }

  private row(piece: MadePiece, view: BenchView): TemplateResult {
    const { serial, repairs, returns, spares, who, where } = piece;
    const open = this.open === serial;
    const what = [
      repairs > 0 ? many(repairs, "repair") : "",
      spares > 0 ? many(spares, "spare part") : "",
      returns > 0 ? `came back ${returns === 1 ? "once" : `${returns} times`}` : "",
    ].filter(Boolean);
    return html`<tr data-serial=${serial}>
        <th scope="row">${serial}</th>
        <td data-label="Revision">${view.design === "" ? `${piece.design} ` : ""}${piece.revision}</td>
        <td data-label="Batch">${piece.batch}</td>
        <td data-label="Where" class="where">
          ${WHERE[where] ?? where} ${who} <span class="small">since ${day(piece.since)}${what.length ? `; ${what.join(", ")}` : ""}</span>
        </td>
        <td data-label="Taken in" class="taken">${piece.takings.length ? sums(piece.takings) : ""}</td>
        <td>
          <button
            type="button"
            class="log-piece"
            aria-expanded=${open}
            aria-label="What happened to ${serial}"
            @click=${() => (this.open = open ? "" : serial)}
          >
            What happened
          </button>
        </td>
      </tr>
      ${open ? html`<tr class="piece-form"><td colspan="6">${this.form(piece)}</td></tr>` : ""}`;
  }

  private form(piece: MadePiece): TemplateResult {
    const what = HAPPENINGS.find((each) => each.what === this.doing);
    return html`<form class="bench-form" @submit=${(e: Event) => this.happened(e, piece, what)}>
      <label
        >What happened
        <select class="happening" @change=${(e: Event) => (this.doing = (e.target as HTMLSelectElement).value)}>
          ${HAPPENINGS.map((each) => html`<option value=${each.what} .selected=${each === what}>${each.title}</option>`)}
          <option value=${TAKINGS} .selected=${!what}>Emptied</option>
        </select></label
      >
      ${what ? this.ofHappening(what, piece) : this.ofTakings()}
      <label class="wide">Note <input class="happening-note" maxlength="500" /></label>
      <button class="apply">Log it</button>
    </form>`;
  }

  private ofHappening(what: Happening, piece: MadePiece): TemplateResult {
    const { design, revision } = piece;
    return html`
      ${what.who ? html`<label>${what.who} <input class="happening-who" maxlength="200" ?required=${what.needed} /></label>` : ""}
      ${what.money ? html`<label>For, ${this.bench.view?.currency} <input class="happening-amount" inputmode="decimal" /></label>` : ""}
      ${what.what === "spare"
        ? html`<p class="wide small">
            <a href="/api/bench/files?${new URLSearchParams({ design, revision: String(revision) })}" download
              >The files of its revision, ${revision}</a
            >: a small workshop, from which the part is cut as it was.
          </p>`
        : ""}
    `;
  }

  private ofTakings(): TemplateResult {
    return html`
      <label>Taken out, ${this.bench.view?.currency} <input class="taking-amount" inputmode="decimal" required /></label>
      <label>Counted by <input class="taking-counted" maxlength="80" required /></label>
      <label>And by <input class="taking-witnessed" maxlength="80" required /></label>
      <label>Seal that was broken <input class="taking-seal" maxlength="40" required /></label>
    `;
  }

  private happened(event: Event, piece: MadePiece, what: Happening | undefined): void {
    event.preventDefault();
    const currency = this.bench.view?.currency ?? "";
    const note = this.text(".happening-note");
    if (what) {
      const amount = plain(this.text(".happening-amount"));
      const who = this.text(".happening-who");
      const paid: Record<string, string> = amount ? { amount, currency } : {};
      this.bench.log("happenings", { piece: piece.serial, what: what.what, who, ...paid }, note);
    } else {
      this.bench.log(
        TAKINGS,
        {
          piece: piece.serial,
          amount: plain(this.text(".taking-amount")),
          currency,
          "counted-by": this.text(".taking-counted"),
          "witnessed-by": this.text(".taking-witnessed"),
          seal: this.text(".taking-seal"),
        },
        note,
      );
    }
    this.open = "";
  }

  private totals(view: BenchView): TemplateResult {
    const places = new Map<string, number>();
    for (const { where } of view.pieces) places.set(where, (places.get(where) ?? 0) + 1);
    const words = [...places].map(([where, count]) => `${count} ${(WHERE[where] ?? where).replace(/ (to|at)$/, "")}`);
    return html`<p class="totals">
      ${many(view.pieces.length, "piece")}: ${words.join(", ")}.${view.design === ""
        ? html` Taken in by all: <strong class="all-takings">${sums(view.takings)}</strong>. Sold for ${sums(view.sales)}.`
        : html` Choose <em>all of them</em> above for what all took in.`}
    </p>`;
  }
}

customElements.define("bench-pieces", BenchPieces);
