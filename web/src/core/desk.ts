import { type DesignView, designPath, get, type Glimpse, post, Refused, type RenewalView, type Standing, type Step, type VersionView, type Workshop } from "./api.js";
import { asWords, merged, sameValue, valueAt } from "./merge.js";
import { placeName } from "./names.js";
import { Watched } from "./watched.js";

/** How often the files are looked at for what was changed elsewhere, ms. */
const LOOK_EVERY = 1500;

/** A change on its way into the files. */
interface Pending {
  id: string;
  label: string;
  steps: Step[];
  /** What stood there when it was decided. */
  seen: string[];
}

/** Two changed the same thing: whose stays? */
export interface Choice {
  text: string;
  decide(mine: boolean): void;
}

/** What lies on the desk: the workshop, and the design that the address names. Every room reads and changes it here. */
export class Desk extends Watched {
  workshop: Workshop | null = null;
  /** The chosen design's id. */
  chosen = "";
  /** The place at the top that the address names; empty for the first. */
  room = "";
  /** As saved. */
  view: DesignView | null = null;
  waiting = true;
  problem = "";
  /** Something to be told that leaves the design as it is. */
  note = "";
  /** What was last said against a glimpse: the next that succeeds takes that back, and nothing else that is told. */
  private refusal = "";
  /** Whether Jackwork does not answer. */
  away = false;
  /** Whether it answers others only: it was started again since this page was opened. */
  shut = false;
  /** Of files that are no design as they are: what can be taken back, and how it could be shown last. */
  standing: Standing | null = null;
  choice: Choice | null = null;
  /** What one step would make of files of an earlier format, and the last such step. */
  renewal: RenewalView | null = null;
  /** Whether that step was made just now: what was not carried over is told once. */
  renewedNow = false;

  private readonly pending: Pending[] = [];
  private saving = false;
  private sending: AbortController | null = null;
  private opening: AbortController | null = null;
  private glimpsed: DesignView | null = null;
  private wanted: Step[] | null = null;
  private looking = false;
  /** Of the next look; 0 before the first. */
  private timer = 0;
  /** Whether the workshop's numbers were changed from this page since the last look: no news from elsewhere then. */
  private ownChange = false;
  /** What was put aside and told already. */
  private readonly told = new Set<string>();

  /** As it is to be shown: as saved, or as it would be with what is being dragged. */
  get shown(): DesignView | null {
    return this.glimpsed ?? this.view;
  }

  get isGlimpse(): boolean {
    return this.glimpsed !== null;
  }

  /** Changes that wait for Jackwork to answer. */
  get unsaved(): number {
    return this.pending.length;
  }

  async begin(): Promise<void> {
    try {
      // It says as well why a workshop cannot be opened; where it is not known, the workshop's own answer tells.
      this.renewal = await get<RenewalView>("/api/renewal").catch(() => null);
      this.workshop = await get<Workshop>("/api/workshop");
      this.shut = false;
      await this.goToAddress();
    } catch (e) {
      this.shut = e instanceof Refused && e.status === 401;
      this.fail(e);
    }
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => void this.look(), LOOK_EVERY);
  }

  /** Fetches the design that the address names, or the first. */
  readonly goToAddress = async (): Promise<void> => {
    const [design = "", room = ""] = location.hash.slice(1).split("&");
    this.room = room;
    const id = decoded(design) || this.workshop?.designs[0]?.id;
    if (id === undefined) {
      this.fail("This workshop has no design yet.\nBegin one with “New design or drawing”, above.");
      return;
    }
    if (id === this.chosen && (this.view || this.waiting) && !this.problem) {
      this.changed();
      return;
    }
    await this.open(id);
  };

  async open(id: string): Promise<void> {
    this.chosen = id;
    this.waiting = true;
    this.problem = "";
    this.note = "";
    this.choice = null;
    this.standing = null;
    this.changed();
    // Whoever goes on to another design waits for the one before no more.
    this.opening?.abort();
    const opening = new AbortController();
    this.opening = opening;
    try {
      const view = await get<DesignView>(designPath(id), opening.signal);
      if (this.chosen !== id) return; // another was chosen while this one was on its way
      this.show(view);
    } catch (e) {
      // Given up for another, or for the same asked anew: that one tells.
      if (this.opening === opening) await this.stand(e);
    }
  }

  /** The design's files are none as they are: tells what is wrong, and fetches what can be done. */
  private async stand(e: unknown): Promise<void> {
    const id = this.chosen;
    this.fail(e);
    if (!(e instanceof Refused) || (e.status !== 422 && e.status !== 500)) return;
    try {
      const standing = await get<Standing>(designPath(id, "standing"));
      if (this.chosen !== id || !this.problem) return;
      this.standing = standing;
      this.changed();
    } catch {
      // What is wrong is told already.
    }
  }

  show(view: DesignView): void {
    if (view.id !== this.chosen) return;
    this.view = view;
    this.glimpsed = null;
    this.waiting = false;
    this.problem = "";
    this.standing = null;
    this.away = this.shut = false;
    document.title = `${view.scene.name}, Jackwork`;
    if (view.putAside && !this.told.has(view.putAside)) {
      this.told.add(view.putAside);
      this.note = view.putAside;
    }
    this.changed();
  }

  fail(e: unknown): void {
    this.view = this.glimpsed = null;
    this.standing = null;
    this.waiting = false;
    this.problem = words(e);
    this.changed();
  }

  /** The address of a design in a room. */
  address(id: string, room: string): string {
    return `#${encodeURIComponent(id)}${room ? `&${room}` : ""}`;
  }

  /** Saves a change at once; where it must wait for Jackwork or for a decision, it does. False when it was refused. */
  async edit(label: string, steps: Step[]): Promise<boolean> {
    const { view } = this;
    if (!view) return false;
    this.note = "";
    this.pending.push({ id: view.id, label, steps, seen: steps.map((step) => valueAt(view, step.path)) });
    await this.save();
    return this.note === "";
  }

  /** Takes the last change back, or makes it again. */
  async step(way: "undo" | "redo"): Promise<void> {
    const version = (this.view ?? this.standing)?.version;
    if (!version || this.saving) return;
    try {
      this.note = "";
      this.show(await post<DesignView>(designPath(this.view?.id ?? this.chosen, way), { version }));
    } catch (e) {
      this.note = words(e);
      if (e instanceof Refused && e.status === 409) await this.fetchAgain().catch((again) => this.stand(again));
      this.changed();
    }
  }

  /** Makes files of an earlier format ones of today's. */
  async renew(): Promise<void> {
    const { renewal } = this;
    if (renewal) await this.renewed("make", { version: renewal.version });
  }

  /** Takes that step back: every file is again what it was. */
  async renewBack(): Promise<void> {
    await this.renewed("back", {});
  }

  private async renewed(way: "make" | "back", body: unknown): Promise<void> {
    this.note = "";
    try {
      await post<RenewalView>(`/api/renewal/${way}`, body);
      this.renewedNow = way === "make";
      this.view = null;
      this.workshop = null;
    } catch (e) {
      this.note = words(e);
    }
    await this.begin();
  }

  private async save(): Promise<void> {
    if (this.saving) return;
    this.saving = true;
    try {
      for (let next = this.pending[0]; next; next = this.pending[0]) {
        if (!(await this.send(next))) break;
        this.pending.shift();
      }
    } finally {
      this.saving = false;
      this.changed();
    }
  }

  /** Sends one change until it is saved or given up; false when Jackwork does not answer. */
  private async send(next: Pending): Promise<boolean> {
    while (next.id === this.view?.id) {
      try {
        const { label, steps } = next;
        const edit = { base: this.view.version, label, steps };
        this.sending = new AbortController();
        this.show(await post<DesignView>(designPath(next.id, "edit"), edit, this.sending.signal));
        return true;
      } catch (e) {
        if (e instanceof DOMException || this.isAway(e)) {
          this.away = true;
          this.changed();
          return false;
        }
        if (!(e instanceof Refused && e.status === 409)) {
          this.note = words(e);
          this.endGlimpse();
          return true;
        }
        if (!(await this.agrees(next))) return true;
      }
    }
    return true;
  }

  /** After a change elsewhere: goes on when that touched other things, else asks whose is to stay. */
  private async agrees(mine: Pending): Promise<boolean> {
    await this.fetchAgain();
    const { view } = this;
    if (!view) return false;
    const now = mine.steps.map((step) => valueAt(view, step.path));
    const wanted = (i: number): string => asWords(mine.steps[i]?.value ?? "");
    // It may have been saved already, only its answer was lost.
    if (now.every((value, i) => sameValue(value, wanted(i)))) return false;
    const clash = now.findIndex((value, i) => value !== mine.seen[i] && !sameValue(value, wanted(i)));
    if (clash < 0) return true;
    const step = mine.steps[clash] as Step;
    const text =
      `${placeName(step.path)} was changed elsewhere, from ${mine.seen[clash]} to ${now[clash]}. ` +
      `You want ${asWords(step.value) || "it gone"}.`;
    mine.seen = now;
    const stays = await new Promise<boolean>((decide) => {
      this.choice = { text, decide };
      this.changed();
    });
    this.choice = null;
    this.changed();
    return stays;
  }

  /** Whether it will answer again by and by: it is away, or was started again and does not know this page yet. */
  private isAway(e: unknown): boolean {
    if (!(e instanceof Refused)) return false;
    this.shut = e.status === 401;
    return this.shut || e.status === 0;
  }

  /** Whether the workshop's numbers are about to be other ones, by this page's own doing. */
  expectChange(own: boolean): void {
    this.ownChange = own;
  }

  private async fetchAgain(): Promise<void> {
    this.show(await get<DesignView>(designPath(this.chosen)));
  }

  /** Looks whether the files were changed elsewhere; sends what waits once Jackwork answers again. */
  private async look(): Promise<void> {
    const { view } = this;
    try {
      if (!view && !this.waiting && !document.hidden) await this.lookAgain();
      if (view && !this.waiting && !document.hidden && !this.choice) {
        const { version } = await get<VersionView>(designPath(view.id, "version"));
        const quiet = !this.saving && !this.isGlimpse && view === this.view;
        this.away = this.shut = false;
        if (this.pending.length > 0) await this.save();
        else if (quiet && version !== view.version) {
          try {
            const own = this.ownChange;
            this.ownChange = false;
            await this.fetchAgain();
            if (!own) this.note = "The files were changed elsewhere; this is how they are now.";
          } catch (e) {
            if (this.isAway(e)) throw e;
            await this.stand(e);
          }
        }
        this.changed();
      }
    } catch (e) {
      if (this.isAway(e)) {
        this.away = this.view !== null; // what is wrong is told already where nothing is shown
        this.sending?.abort(); // an answer that Jackwork took away with it never comes
      } else this.note = words(e);
      this.changed();
    }
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => void this.look(), LOOK_EVERY);
  }

  /** Nothing is shown: whether this page is let in now, or the files were mended. */
  private async lookAgain(): Promise<void> {
    if (this.shut) {
      await get<Workshop>("/api/workshop");
      await this.begin();
    } else if (this.standing) {
      const { version } = await get<VersionView>(designPath(this.chosen, "version"));
      if (version !== this.standing.version) await this.open(this.chosen);
    }
  }

  /** Shows a change that is not saved, as soon as the last answer is there; only the newest counts. */
  glimpse(steps: Step[]): void {
    this.wanted = steps;
    if (!this.looking) void this.answerGlimpses();
  }

  /** Back to what is saved. */
  endGlimpse(): void {
    this.wanted = null;
    this.glimpsed = null;
    this.changed();
  }

  private async answerGlimpses(): Promise<void> {
    this.looking = true;
    while (this.wanted && this.view) {
      const [steps, { id, version }] = [this.wanted, this.view];
      this.wanted = null;
      const began = performance.now();
      try {
        const answer = await post<Glimpse>(designPath(id, "glimpse"), { base: version, label: "", steps });
        if (this.view?.version !== version) continue;
        if (this.note === this.refusal) this.note = "";
        this.glimpsed = merged(this.view, answer);
      } catch (e) {
        this.note = this.refusal = words(e);
      }
      this.changed();
      await Promise.all([...this.watching].map((host) => host.updateComplete));
      performance.measure("glimpse", { start: began, end: performance.now() });
    }
    this.looking = false;
  }
}

const words = (e: unknown): string => (e instanceof Error ? e.message : String(e));

/** A part of the address as text; the text itself when it was never encoded rightly. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
