import type { ReactiveController, ReactiveControllerHost } from "lit";
import { get, type JobView, post } from "./api.js";

/** How often running work is asked how it stands, ms. */
const ASK_EVERY = 300;

/** One long piece of work on the server: begun, followed, stopped. */
export class Following implements ReactiveController {
  job: JobView | null = null;
  problem = "";
  private timer = 0;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.timer);
  }

  get running(): boolean {
    return this.job?.state === "running";
  }

  async begin(path: string, body: unknown): Promise<void> {
    clearTimeout(this.timer);
    this.problem = "";
    await this.take(post<JobView>(path, body));
  }

  async stop(): Promise<void> {
    if (!this.job) return;
    const stopping = fetch(`/api/jobs/${this.job.number}`, { method: "DELETE" });
    await stopping.catch(() => undefined);
  }

  forget(): void {
    clearTimeout(this.timer);
    if (this.running) void this.stop();
    this.job = null;
    this.problem = "";
    this.host.requestUpdate();
  }

  private async take(asked: Promise<JobView>): Promise<void> {
    try {
      this.job = await asked;
      this.problem = this.job.problem;
      if (this.job.state === "running") {
        const { number } = this.job;
        this.timer = window.setTimeout(() => void this.take(get<JobView>(`/api/jobs/${number}`)), ASK_EVERY);
      }
    } catch (e) {
      this.problem = e instanceof Error ? e.message : String(e);
      if (this.job?.state === "running") this.job = { ...this.job, state: "stopped" };
    }
    this.host.requestUpdate();
  }
}
