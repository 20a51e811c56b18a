import type { ReactiveController, ReactiveControllerHost } from "lit";
import { type DesignView, designPath, get, type Workshop } from "./api.js";

/** What lies on the desk: the workshop, and the design that the address names. Every room reads it here. */
export class Desk implements ReactiveController {
  workshop: Workshop | null = null;
  /** The chosen design's id. */
  chosen = "";
  /** The place at the top that the address names; empty for the first. */
  room = "";
  view: DesignView | null = null;
  waiting = true;
  problem = "";

  private readonly watching = new Set<ReactiveControllerHost>();

  /** Every element that shows something of the desk watches it. */
  watch(host: ReactiveControllerHost): this {
    this.watching.add(host);
    host.addController(this);
    return this;
  }

  forget(host: ReactiveControllerHost): void {
    this.watching.delete(host);
  }

  hostConnected(): void {
    // Nothing: the desk outlives what shows it.
  }

  /** Tells all who watch that something has changed. */
  changed(): void {
    for (const host of this.watching) host.requestUpdate();
  }

  async begin(): Promise<void> {
    try {
      this.workshop = await get<Workshop>("/api/workshop");
      await this.goToAddress();
    } catch (e) {
      this.fail(e);
    }
  }

  /** Fetches the design that the address names, or the first. */
  readonly goToAddress = async (): Promise<void> => {
    const [design = "", room = ""] = location.hash.slice(1).split("&");
    this.room = room;
    const id = decoded(design) || this.workshop?.designs[0]?.id;
    if (id === undefined) {
      this.fail("This workshop has no design yet.\nMake one with: jackwork new NAME --from heron");
      return;
    }
    if (id === this.chosen && this.view && !this.problem) {
      this.changed();
      return;
    }
    await this.open(id);
  };

  async open(id: string): Promise<void> {
    this.chosen = id;
    this.waiting = true;
    this.problem = "";
    this.changed();
    try {
      const view = await get<DesignView>(designPath(id));
      if (this.chosen !== id) return; // another was chosen while this one was on its way
      this.show(view);
    } catch (e) {
      if (this.chosen === id) this.fail(e);
    }
  }

  show(view: DesignView): void {
    this.view = view;
    this.waiting = false;
    this.problem = "";
    document.title = `${view.scene.name}, Jackwork`;
    this.changed();
  }

  fail(e: unknown): void {
    this.view = null;
    this.waiting = false;
    this.problem = e instanceof Error ? e.message : String(e);
    this.changed();
  }

  /** The address of a design in a room. */
  address(id: string, room: string): string {
    return `#${encodeURIComponent(id)}${room ? `&${room}` : ""}`;
  }
}

/** A part of the address as text; the text itself when it was never encoded rightly. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
