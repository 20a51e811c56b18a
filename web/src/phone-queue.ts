/** What was logged here and has not been acknowledged yet; it outlives the page. */

export interface Entry {
  readonly id: string;
  readonly kind: "trial" | "timing" | "strike-trial";
  readonly at: string;
  readonly [field: string]: string | number;
}

interface Result {
  readonly id: string;
  readonly logged: boolean;
  readonly problem: string | null;
}

const PLACE = "jackwork-bench-unsent";
/** As many as the server takes at once. */
const MOST = 200;

function read(): Entry[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(PLACE) ?? "[]");
    return Array.isArray(kept) ? (kept as Entry[]) : [];
  } catch {
    return [];
  }
}

function keep(entries: Entry[]): void {
  localStorage.setItem(PLACE, JSON.stringify(entries));
}

export type Sent = "sent" | "offline" | "locked out";

export class Queue {
  private sending = false;

  /** @param refused told of an entry that will never be taken, and why */
  constructor(private readonly refused: (problem: string) => void) {}

  get length(): number {
    return read().length;
  }

  add(entry: Entry): void {
    keep([...read(), entry]);
  }

  /** Takes back an entry that has not gone yet; false when it may have. */
  remove(id: string): boolean {
    const entries = read();
    if (this.sending || !entries.some((entry) => entry.id === id)) {
      return false;
    }
    keep(entries.filter((entry) => entry.id !== id));
    return true;
  }

  /** Sends what waits; what comes back unacknowledged stays and is sent again under the same id. */
  async send(): Promise<Sent> {
    if (this.sending) {
      return "sent";
    }
    this.sending = true;
    try {
      for (let batch = read().slice(0, MOST); batch.length > 0; batch = read().slice(0, MOST)) {
        const answer = await fetch("/log", {
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
        keep(read().filter((entry) => !done.has(entry.id)));
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
