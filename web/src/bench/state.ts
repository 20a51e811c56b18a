import { type BenchPulse, type BenchView, get, type PhoneView, post, type Typed } from "../core/api.js";
import { now, Queue, type Sent, uuid } from "../core/unsent.js";
import { Watched } from "../core/watched.js";

const LOOK_EVERY = 1500;
const WISH = "jackwork-bench-wish";

/** What is to be proved of a piece. */
export interface Wish {
  rate: number;
  confidence: number;
}

/** The log as it was last seen, and what is on its way into it. */
export class BenchState extends Watched {
  view: BenchView | null = null;
  phone: PhoneView | null = null;
  /** That its entries are shown of; empty for all. */
  design = "";
  problem = "";
  /** Something that the log did not take, and why. */
  refused = "";
  away = false;
  wish: Wish = kept();

  private queue: Queue<Typed> | null = null;
  private timer = 0;
  private fetching: Promise<void> | null = null;

  /** What waits is kept by workshop: another's page may have the same address. */
  begin(workshop: string): void {
    this.end();
    this.queue = new Queue(`jackwork-desk-unsent ${workshop}`, "/api/bench/log", (problem) => (this.refused = problem));
    void this.look();
  }

  end(): void {
    clearTimeout(this.timer);
  }

  /** Entries that wait for Jackwork to answer. */
  get waiting(): number {
    return this.queue?.length ?? 0;
  }

  async choose(design: string): Promise<void> {
    this.design = design;
    await this.fetch();
  }

  async wishFor(wish: Wish): Promise<void> {
    this.wish = wish;
    localStorage.setItem(WISH, JSON.stringify(wish));
    await this.fetch();
  }

  /** Logs an entry now, or as soon as Jackwork answers; its id. */
  log(kind: string, fields: Record<string, string>, note = "", at = now()): string {
    const entry: Typed = { id: uuid(), kind, at, note, fields };
    this.queue?.add(entry);
    this.refused = "";
    void this.send();
    return entry.id;
  }

  /** An entry of this page's that is to count no more: never sent where it still waits, else struck. */
  takeBack(kind: string, id: string): void {
    if (!this.queue?.remove(id)) this.strike(kind, `page-${id}`, "taken back on the page");
    this.changed();
  }

  strike(kind: string, key: string, why: string): void {
    this.log("strike", { of: kind, key, why });
  }

  async send(): Promise<void> {
    const sent = this.queue?.send() ?? Promise.resolve<Sent>("sent");
    this.changed();
    this.away = (await sent) !== "sent";
    if (this.away) this.changed();
    else await this.fetch();
  }

  /** Asks for the log anew; whoever asks meanwhile gets the same answer and one more look. */
  async fetch(): Promise<void> {
    while (this.fetching) await this.fetching;
    this.fetching = this.ask();
    await this.fetching;
    this.fetching = null;
  }

  private async ask(): Promise<void> {
    const { design, wish } = this;
    const query = new URLSearchParams({ design, rate: String(wish.rate), confidence: String(wish.confidence) });
    try {
      const view = await get<BenchView>(`/api/bench?${query}`);
      if (design === this.design) this.view = view;
      this.problem = "";
      this.away = false;
    } catch (e) {
      this.problem = words(e);
    }
    this.changed();
  }

  private async look(): Promise<void> {
    if (!document.hidden) {
      try {
        const pulse = await get<BenchPulse>("/api/bench/pulse");
        const other = JSON.stringify(pulse.phone) !== JSON.stringify(this.phone);
        this.phone = pulse.phone;
        if (this.waiting > 0) await this.send();
        else if (pulse.state !== this.view?.state || this.away) await this.fetch();
        else if (other) this.changed();
      } catch {
        this.away = true;
        this.changed();
      }
    }
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => void this.look(), LOOK_EVERY);
  }

  /** Does something at once; what goes wrong is told where it was asked for. */
  async post<T>(path: string, body: unknown): Promise<T> {
    const answer = await post<T>(path, body);
    await this.fetch();
    return answer;
  }
}

export const words = (e: unknown): string => (e instanceof Error ? e.message : String(e));

function kept(): Wish {
  try {
    const wish = JSON.parse(localStorage.getItem(WISH) ?? "null") as Wish | null;
    if (wish && wish.rate > 0 && wish.rate < 1 && wish.confidence > 0 && wish.confidence < 1) return wish;
  } catch {
    // Another page's; ours is taken.
  }
  return { rate: 0.99, confidence: 0.95 };
}
