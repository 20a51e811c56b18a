import { html, LitElement, svg, type TemplateResult } from "lit";
import type { Ladder, PriceReport } from "../core/api.js";
import { at, type Filling, stretches } from "./bars.js";
import { KINDS, money, size } from "./words.js";

const LINE = 19;
const ROW = 52;
const BAR = 20;

/** From the floor to the shelf, channel by channel, with the maker's bands and the price asked; that line can be pulled. */
class PayLadder extends LitElement {
  static override properties = { report: { attribute: false } };

  report: PriceReport | null = null;
  /** What the picture reaches while the line is pulled, so that it does not run away. */
  private held = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    const { report } = this;
    if (!report) return html``;
    const most = this.held || reach(report);
    return html`<h3 id="ladder-title">From the floor to the shelf</h3>
      ${this.picture(report, most)}
      <p class="legend">
        ${legend("wood", "floor: what a good piece costs")} ${legend("hatched", "your profit")}
        ${legend("crossed", "what shops, fees and postage take")} ${legend("dotted", "VAT")}
      </p>
      <details class="amounts">
        <summary>Every amount</summary>
        <div class="ladders">${report.ladders.map((ladder) => table(ladder, report))}</div>
      </details>
      <p class="small">
        ${report.bands.guessed ? "The bands are ours, guessed: put your own into My workshop. " : ""}${registered(report)
          ? "Were you not registered for VAT: "
          : "Were you registered for VAT: "}${report.laddersOtherVat
          .map(({ channel, shelf }) => `${channel} ${money(shelf)}`)
          .join(", ")}
        ${report.currency}.
      </p>`;
  }

  private picture(report: PriceReport, most: number): TemplateResult {
    const bands = report.bands.bands;
    const top = LINE * (bands.length + 1) + 8;
    const height = top + ROW * report.ladders.length + 4;
    const asked = size(report.asked) / most;
    return html`<svg class="ladder" width="100%" height=${height} role="img" aria-label=${inWords(report)}>
      ${svg`
        ${bands.map((band, i) => boundary(`${band.name}, up to ${money(band.to)}`, size(band.to) / most, LINE * (i + 1), height))}
        ${report.ladders.map((ladder, i) => rung(ladder, most, top + ROW * i, report))}
        ${label("asked", `asked ${money(report.asked)} ${report.currency}`, asked, LINE * (bands.length + 1))}
        <line class="asked" x1=${at(asked)} x2=${at(asked)} y1=${LINE * bands.length + 6} y2=${height}></line>
        <g class="pull" @pointerdown=${this.pull}>
          <circle class="reach" cx=${at(asked)} cy=${height - 12} r="20"></circle>
          <circle class="mark" cx=${at(asked)} cy=${height - 12} r="7"></circle>
        </g>`}
    </svg>`;
  }

  private readonly pull = (event: PointerEvent): void => {
    const grip = event.currentTarget as SVGGElement;
    const picture = grip.ownerSVGElement;
    if (!picture || !this.report) return;
    event.preventDefault();
    grip.setPointerCapture(event.pointerId);
    this.held = reach(this.report);
    const move = (moved: PointerEvent): void => {
      const box = picture.getBoundingClientRect();
      const share = (moved.clientX - box.left) / box.width;
      const whole = Math.max(1, Math.round(Math.min(1, share) * this.held));
      this.dispatchEvent(new CustomEvent("asked", { detail: String(whole), bubbles: true }));
    };
    const end = (): void => {
      grip.removeEventListener("pointermove", move);
      this.held = 0;
      this.requestUpdate();
    };
    grip.addEventListener("pointermove", move);
    grip.addEventListener("lostpointercapture", end, { once: true });
  };
}

/** Where the picture ends: beyond everything in it. */
function reach(report: PriceReport): number {
  const amounts = [report.asked, ...report.ladders.map(({ shelf }) => shelf), ...report.bands.bands.map(({ to }) => to)];
  return 1.06 * Math.max(...amounts.map(size), 1);
}

const registered = (report: PriceReport): boolean =>
  report.numbers.some(({ name, number }) => name === "vat.registered" && number.value !== 0);

/** Words beside a line, on the side where there is room. */
const label = (kind: string, words: string, share: number, y: number): TemplateResult =>
  svg`<text class=${kind} x=${at(share)} y=${y - 5} dx=${share < 0.5 ? 5 : -5} text-anchor=${share < 0.5 ? "start" : "end"}>${words}</text>` as TemplateResult;

const boundary = (words: string, share: number, y: number, height: number): TemplateResult =>
  svg`<line class="band" x1=${at(share)} x2=${at(share)} y1=${y - LINE + 2} y2=${height}></line>${label("band-name", words, share, y)}` as TemplateResult;

function rung(ladder: Ladder, most: number, y: number, report: PriceReport): TemplateResult {
  let from = 0;
  const parts = ladder.rungs.map(({ name, reaches }) => {
    const part = { from: from / most, to: size(reaches) / most, filling: filling(name) };
    from = size(reaches);
    return part;
  });
  return svg`<text class="channel" x="0" y=${y + 16}>${ladder.channel}: ${money(ladder.shelf)} ${report.currency}</text>
    ${stretches(parts, y + 23, BAR)}` as TemplateResult;
}

/** What the buyer's money is for: VAT, the maker's profit, the floor, or somebody else's share. */
function filling(rung: string): Filling {
  if (/\bVAT\b/.test(rung)) return "dotted";
  if (rung === "floor") return "wood";
  return rung === "profit" ? "hatched" : "crossed";
}

const legend = (kind: Filling, words: string): TemplateResult =>
  html`<span><svg class="bar" width="26" height="14" aria-hidden="true">${stretches([{ from: 0, to: 1, filling: kind }], 1, 12)}</svg> ${words}</span>`;

const inWords = (report: PriceReport): string =>
  `From a floor of ${report.ladders[0]?.floor ?? report.floor} to the shelf, in ${report.currency}: ` +
  report.ladders.map(({ channel, shelf }) => `${channel} ${shelf}`).join(", ") +
  `; asked ${report.asked}. Every amount stands below.`;

function table(ladder: Ladder, report: PriceReport): TemplateResult {
  return html`<table data-channel=${ladder.channel}>
    <caption>
      <strong>${ladder.channel}</strong>, ${KINDS[ladder.kind] ?? ladder.kind}:
      ${ladder.band ?? "beyond the dearest band"}
    </caption>
    <thead>
      <tr>
        <td></td>
        <th scope="col">adds</th>
        <th scope="col">reaches</th>
      </tr>
    </thead>
    <tbody>
      ${ladder.rungs.map(
        ({ name, adds, reaches }) => html`<tr>
          <th scope="row">${name}</th>
          <td>${name === "floor" ? "" : money(adds)}</td>
          <td>${money(reaches)}</td>
        </tr>`,
      )}
    </tbody>
    <tfoot>
      <tr>
        <th scope="row">on the shelf</th>
        <td></td>
        <td class="shelf">${money(ladder.shelf)} ${report.currency}</td>
      </tr>
      ${ladder.kind === "fair"
        ? html`<tr>
            <th scope="row" colspan="3">${fair(ladder)}</th>
          </tr>`
        : ""}
    </tfoot>
  </table>`;
}

function fair({ breakEven, breakEvenAsked }: Ladder): string {
  if (breakEven == null) return "No number of pieces pays for the day.";
  const asked = breakEvenAsked == null ? "at the price asked no number does" : `${breakEvenAsked} at the price asked`;
  return `The day is paid for by ${breakEven} pieces at that price, ${asked}.`;
}

customElements.define("jackwork-pay-ladder", PayLadder);
