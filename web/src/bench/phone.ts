import { html, type TemplateResult } from "lit";
import type { PhoneView } from "../core/api.js";
import { BenchPart } from "./part.js";
import { words } from "./state.js";
import { clock } from "./words.js";

/** Lets a phone log, by a link that works once; says who is in, and turns them out. */
class BenchPhone extends BenchPart {
  static override properties = { ...BenchPart.properties, problem: { state: true } };

  private problem = "";

  protected override render(): TemplateResult {
    const { phone } = this.bench;
    if (!phone) return html``;
    return html`<section class="phone" data-on=${phone.on} data-in=${phone.guests.length}>
      <h2>A phone beside the laser</h2>
      <p>
        It can log tries and times, take the last one back, and nothing else. What is pressed while the connection is down waits on it
        and is sent again.
      </p>
      ${phone.on ? this.on(phone) : this.off(phone)}
      ${this.problem ? html`<pre class="problem" role="alert">${this.problem}</pre>` : ""}
      <p class="small">
        It is plain HTTP in your own network: whoever listens in it can read along. It ends when this page's Jackwork ends.
      </p>
    </section>`;
  }

  private off(phone: PhoneView): TemplateResult {
    return html`<div class="bench-form">
      ${phone.addresses.length > 1
        ? html`<label
            >This machine in the house's network
            <select class="phone-address">
              ${phone.addresses.map((address) => html`<option>${address}</option>`)}
            </select></label
          >`
        : ""}
      <button type="button" class="apply let-in" @click=${this.letIn}>Let a phone in</button>
    </div>`;
  }

  private on(phone: PhoneView): TemplateResult {
    return html`
      ${phone.link
        ? html`<div class="link">
            <img class="code" src="/api/bench/phone-code.svg?${encodeURIComponent(phone.link.split("#")[1] ?? "")}" alt="The link as a QR code" />
            <div>
              <p>Point the phone's camera at it, or type:</p>
              <p class="phone-link">${phone.link}</p>
              <p class="small">It lets one phone in, once, within ten minutes.</p>
            </div>
          </div>`
        : html`<p>The last link is used up, or too old.</p>`}
      <h3>Who is in</h3>
      ${phone.guests.length === 0
        ? html`<p class="guests">Nobody yet.</p>`
        : html`<ul class="guests">
            ${phone.guests.map(({ since, until }) => html`<li>a phone, since ${clock(since)}, until ${clock(until)} at the latest</li>`)}
          </ul>`}
      <p class="buttons">
        <button type="button" class="let-in" @click=${this.letIn}>Another link</button>
        <button type="button" class="turn-out" @click=${this.turnOut}>Stop, and turn everybody out</button>
      </p>
    `;
  }

  private readonly letIn = async (): Promise<void> => {
    this.problem = "";
    try {
      this.bench.phone = await this.bench.post<PhoneView>("/api/bench/phone", { address: this.text(".phone-address") });
      this.bench.changed();
    } catch (e) {
      this.problem = words(e);
    }
  };

  private readonly turnOut = async (): Promise<void> => {
    try {
      const response = await fetch("/api/bench/phone", { method: "DELETE" });
      this.bench.phone = (await response.json()) as PhoneView;
      this.problem = "";
    } catch {
      this.problem = "Jackwork does not answer.";
    }
    this.bench.changed();
  };
}

customElements.define("bench-phone", BenchPhone);
