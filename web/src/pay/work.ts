import { LitElement, type PropertyValues } from "lit";
import { designPath, type PayView } from "../core/api.js";
import { Following } from "../core/jobs.js";

/** A part of *Will it pay?* with long work of its own; that it is done is told as an event `settled`. */
export abstract class PayWork extends LitElement {
  static override properties = { pay: { attribute: false }, design: {} };

  pay: PayView | null = null;
  design = "";
  protected readonly work = new Following(this);
  private told = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("design") && changed.get("design") !== undefined) this.work.forget();
  }

  protected override updated(): void {
    const { job } = this.work;
    if (job?.state === "done" && job.number !== this.told) {
      this.told = job.number;
      this.dispatchEvent(new CustomEvent("settled", { bubbles: true }));
    }
  }

  /** Begins it on the state that is shown. */
  protected begin(what: string, pay: PayView, wish: object = {}): void {
    void this.work.begin(designPath(this.design, what), { version: pay.version, laidOut: pay.laidOut, ...wish });
  }
}
