import { LitElement, type PropertyValues } from "lit";
import type { BenchState } from "./state.js";

/** A part of the bench: follows the log as it is, and draws itself into the page. */
export class BenchPart extends LitElement {
  static override properties = { bench: { attribute: false } };

  bench!: BenchState;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("bench")) this.bench.watch(this);
  }

  protected text(selector: string): string {
    return this.querySelector<HTMLInputElement | HTMLSelectElement>(selector)?.value.trim() ?? "";
  }

  protected empty(...selectors: string[]): void {
    for (const selector of selectors) {
      const field = this.querySelector<HTMLInputElement>(selector);
      if (field) field.value = "";
    }
  }
}
