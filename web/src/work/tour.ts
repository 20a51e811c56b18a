import { html, LitElement, type TemplateResult } from "lit";

const KEY = "jackwork-seen";

const STEPS = [
  "Pull the ring on the lever: the figure does what it would do. Let go, and its own weight brings it back, or not.",
  "Drag a coin to the slot, or press it, and watch its whole way. Beside it stands what was found, the worst first.",
  "Press “Change it” to drag pivots, strings and weights. Everything is saved at once and can be taken back.",
];

/** What one can do here, in three sentences; shown once. */
class Tour extends LitElement {
  static override properties = { step: { state: true } };

  private step = localStorage.getItem(KEY) ? STEPS.length : 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    const words = STEPS[this.step];
    if (!words) return html``;
    const last = this.step === STEPS.length - 1;
    return html`<aside class="tour" aria-label="What one can do here">
      <p>${words}</p>
      <p class="buttons">
        <span class="clock">${this.step + 1} of ${STEPS.length}</span>
        ${last ? "" : html`<button type="button" @click=${() => this.step++}>Next</button>`}
        <button type="button" class="${last ? "" : "plain"} enough" @click=${this.enough}>${last ? "Begin" : "Skip"}</button>
      </p>
    </aside>`;
  }

  private readonly enough = (): void => {
    localStorage.setItem(KEY, "yes");
    this.step = STEPS.length;
  };
}

customElements.define("jackwork-tour", Tour);
