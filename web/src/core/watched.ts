import type { ReactiveControllerHost } from "lit";

/** What several elements show and outlives each of them: all who watch it are drawn again when it changes. */
export abstract class Watched {
  /** Those on the page; who left it is not drawn any more. */
  protected readonly watching = new Set<ReactiveControllerHost>();
  private readonly known = new WeakSet<ReactiveControllerHost>();

  /** Every element that shows something of it watches it. */
  watch(host: ReactiveControllerHost): this {
    if (!this.known.has(host)) {
      this.known.add(host);
      host.addController({
        hostConnected: () => this.watching.add(host),
        hostDisconnected: () => this.watching.delete(host),
      });
    }
    return this;
  }

  /** Tells all who watch that something has changed. */
  changed(): void {
    for (const host of this.watching) host.requestUpdate();
  }
}
