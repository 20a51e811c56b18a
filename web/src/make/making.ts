import type { ReactiveController, ReactiveControllerHost } from "lit";
import { type DesignView, designPath, type ForMaking, get, type MakeSheets, type MakeView } from "../core/api.js";

/** A maker types more than one digit, ms. */
const PAUSE = 500;

/** What is wanted of every design, while the page is open: a sheet in hand is in hand whatever is cut from it. */
class Wanted {
  quantity = 1;
  /** Empty for the workshop's. */
  paper = "";
  /** Of sheets in hand, mm, by their names. */
  measured: Record<string, number> = {};

  get measuredAny(): boolean {
    return Object.keys(this.measured).length > 0;
  }

  get now(): ForMaking {
    return { quantity: this.quantity, paper: this.paper, measured: { ...this.measured } };
  }
}

const wanted = new Wanted();

/** A state of a design with what is wanted of it: whatever is shown is fetched by it. */
export class Source {
  readonly key: string;

  constructor(
    readonly id: string,
    readonly version: string,
    readonly making: ForMaking,
  ) {
    this.key = `${id} ${version} ${JSON.stringify(making)}`;
  }

  /** The address of something of it. */
  path(what: string, more = ""): string {
    const of = encodeURIComponent(JSON.stringify(this.making));
    return `${designPath(this.id, what)}?of=${of}${more}&version=${this.version}`;
  }
}

/** Fetches what is made of the design on the desk, again whenever it or what is wanted of it changes. */
export class Making implements ReactiveController {
  readonly wanted = wanted;
  view: MakeView | null = null;
  sheets: MakeSheets | null = null;
  /** That `view` is of. */
  source: Source | null = null;
  /** Whether what is wanted is not shown yet. */
  waiting = false;
  problem = "";
  sheetsProblem = "";

  private asked = "";
  /** Of a pause in typing; 0 when there is none. */
  private timer = 0;
  private answering = false;
  private under: AbortController | null = null;

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly design: () => DesignView | null,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.timer);
    this.timer = 0;
    this.under?.abort();
    this.asked = "";
  }

  /** Asks again, at once, where another state is shown than the desk's. */
  follow(): void {
    const view = this.design();
    if (!view || this.timer) return;
    const next = new Source(view.id, view.version, wanted.now);
    if (next.key === this.asked) {
      this.waiting = this.answering;
      return;
    }
    if (this.source && this.source.id !== view.id) {
      this.view = this.sheets = this.source = null;
    }
    this.asked = next.key;
    void this.fetch(next);
  }

  /** Something of what is wanted changes; the answer follows at once, or when no more is typed. */
  want(change: (wanted: Wanted) => void, typing = false): void {
    change(wanted);
    this.waiting = true;
    clearTimeout(this.timer);
    this.timer = typing ? window.setTimeout(this.typed, PAUSE) : 0;
    this.host.requestUpdate();
  }

  private readonly typed = (): void => {
    this.timer = 0;
    this.host.requestUpdate();
  };

  /** What is wanted, once it is shown; null while it is not, or cannot be made. */
  get current(): Source | null {
    return this.source?.key === this.asked && !this.timer ? this.source : null;
  }

  forgetMeasured(): void {
    wanted.measured = {};
    this.host.requestUpdate();
  }

  private async fetch(source: Source): Promise<void> {
    this.under?.abort();
    const under = new AbortController();
    this.under = under;
    this.waiting = this.answering = true;
    this.problem = "";
    try {
      const view = await get<MakeView>(source.path("make"), under.signal);
      if (this.under !== under) return;
      this.view = view;
      this.source = source;
      this.host.requestUpdate();
      await this.fetchSheets();
      if (this.under !== under) return;
    } catch (e) {
      if (this.under !== under) return;
      this.problem = words(e);
    }
    this.waiting = this.answering = false;
    this.host.requestUpdate();
  }

  async fetchSheets(): Promise<void> {
    const { source, under } = this;
    if (!source || !under) return;
    this.sheetsProblem = "";
    try {
      const sheets = await get<MakeSheets>(source.path("sheets"), under.signal);
      if (this.source === source) this.sheets = sheets;
    } catch (e) {
      if (this.under === under && this.source === source) this.sheetsProblem = words(e);
    }
    this.host.requestUpdate();
  }
}

export const words = (e: unknown): string => (e instanceof Error ? e.message : String(e));
