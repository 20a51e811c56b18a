/** What was logged here and has not been acknowledged yet; it outlives the page. */

export interface Entry {
  /** A random UUID: the same again is the same entry. */
  readonly id: string;
}

/** crypto.randomUUID needs https, which a workshop's own network does not have. */
export function uuid(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] as number) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] as number) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

/** Now, as the log has it: whole seconds, UTC. */
export const now = (): string => `${new Date().toISOString().slice(0, 19)}Z`;

interface Result {
  readonly id: string;
  readonly logged: boolean;
  readonly problem: string | null;
}

/** As many as the server takes at once. */
const MOST = 200;

export type Sent = "sent" | "offline" | "locked out";

export class Queue<E extends Entry> {
  private sending = false;

  /**
   * @param place in this browser's own storage
   * @param path where entries are sent
   * @param refused told of an entry that will never be taken, and why
   */
  constructor(
    private readonly place: string,
    private readonly path: string,
    private readonly refused: (problem: string) => void,
  ) {}

  get length(): number {
    return this.read().length;
  }

  private read(): E[] {
    try {
      const kept: unknown = JSON.parse(localStorage.getItem(this.place) ?? "[]");
      return Array.isArray(kept) ? (kept as E[]) : [];
    } catch {
      return [];
    }
  }

  private keep(entries: E[]): void {
    localStorage.setItem(this.place, JSON.stringify(entries));
  }

  add(entry: E): void {
    this.keep([...this.read(), entry]);
  }

  /** Takes back an entry that has not gone yet; false when it may have. */
  remove(id: string): boolean {
    const entries = this.read();
    if (this.sending || !entries.some((entry) => entry.id === id)) {
      return false;
    }
    this.keep(entries.filter((entry) => entry.id !== id));
    return true;
  }

  /** Sends what waits; what comes back unacknowledged stays and is sent again under the same id. */
  async send(): Promise<Sent> {
    if (this.sending) {
      return "sent";
    }
    this.sending = true;
    try {
      for (let batch = this.read().slice(0, MOST); batch.length > 0; batch = this.read().slice(0, MOST)) {
        const answer = await fetch(this.path, {
          method: "POST",
          headers: { "Content-Type": "application/json" },
          body: JSON.stringify({ entries: batch }),
          signal: AbortSignal.timeout(15_000),
        });
        if (answer.status === 401) {
          return "locked out";
        }
        if (!answer.ok) {
          return "offline";
        }
        const { results } = (await answer.json()) as { results: Result[] };
        const done = new Set(results.map((result) => result.id));
        if (!batch.some((entry) => done.has(entry.id))) {
          return "offline";
        }
        this.keep(this.read().filter((entry) => !done.has(entry.id)));
        results.filter((result) => !result.logged).forEach((result) => this.refused(result.problem ?? ""));
      }
      return "sent";
    } catch {
      return "offline";
    } finally {
      this.sending = false;
    }
  }
}
