import type { BringPlan, Brought, BroughtShape, Pair, PointRole } from "../core/api.js";

/** What a point may be for. */
export type Role = PointRole;

/** A part as the maker sees it: an outline with what was said about it. */
export interface PartEntry {
  /** Its own, whatever it is called. */
  key: string;
  /** The outline's, from the file that it came with. */
  shape: BroughtShape;
  file: number;
  name: string;
  stock: string;
  layer: number;
  /** Key of the part that it is glued to; "box": it stands on the box; empty: neither. */
  glued: string;
  painted: boolean;
}

export interface PointEntry {
  key: string;
  name: string;
  at: Pair;
  radius: number;
  role: Role;
  /** Keys of parts. */
  parts: string[];
  grams: number;
  /** Set by the maker, not drawn: it may be moved. */
  own: boolean;
}

export interface BroughtFile {
  file: File;
  read: Brought;
  /** Where the maker moved a further file's outlines, mm. */
  shift: Pair;
}

const MOST_CHOSEN = 14;

/** Everything said so far about the drawings brought in. */
export class Figure {
  files: BroughtFile[] = [];
  parts: PartEntry[] = [];
  points: PointEntry[] = [];
  title = "";
  box = "";
  shift: Pair = [0, 0];
  placed = false;
  private count = 0;

  constructor(private readonly stock: string) {}

  /** Takes in a file's outlines and circles; the first few are parts until the maker says otherwise. */
  add(file: File, read: Brought): void {
    const at = this.files.length;
    this.files.push({ file, read, shift: at === 0 ? [0, 0] : this.middleOf(read) });
    if (this.title === "") this.title = titled(file.name);
    const known = this.parts.length;
    if (known + read.shapes.length <= MOST_CHOSEN) read.shapes.forEach((shape) => this.choose(shape, at));
    read.rounds.forEach((round) => {
      const parts = this.parts
        .filter((part) => part.file === at && round.inside.includes(part.shape.key))
        .map((part) => part.key);
      this.points.push({
        key: `${at}:${round.key}`,
        name: this.unused(plain(round.id) || "point"),
        at: this.moved(round.at, at),
        radius: round.radius,
        // A circle cut out of a part is a hole until somebody says more of it.
        role: parts.length > 1 ? "pin" : /h\d+$/.test(round.key) ? "hole" : "none",
        parts,
        grams: 10,
        own: false,
      });
    });
  }

  /** The same files at their true size: what was said stays. */
  resized(reads: Brought[]): void {
    const grown = (reads[0]?.scale ?? 1) / (this.files[0]?.read.scale ?? 1);
    reads.forEach((read, i) => {
      const file = this.files[i];
      if (file) [file.read, file.shift] = [read, [file.shift[0] * grown, file.shift[1] * grown]];
    });
    for (const part of this.parts) {
      part.shape = this.files[part.file]?.read.shapes.find((s) => s.key === part.shape.key) ?? part.shape;
    }
    for (const point of this.points) {
      const [file = "0", key] = point.key.split(":");
      const round = this.files[Number(file)]?.read.rounds.find((r) => r.key === key);
      point.at = round && !point.own ? this.moved(round.at, Number(file)) : [point.at[0] * grown, point.at[1] * grown];
      if (round) point.radius = round.radius;
    }
    this.placed = false;
  }

  /** Makes a part of an outline; of one that is a part already, one more like it. */
  choose(shape: BroughtShape, file: number): PartEntry {
    const part: PartEntry = {
      key: `part${++this.count}`,
      shape,
      file,
      name: this.unused(plain(shape.id) || "part"),
      stock: this.stock,
      layer: shape.layer + (this.partOf(shape, file) ? 1 : 0),
      glued: "",
      painted: shape.paint !== null,
    };
    this.parts.push(part);
    for (const point of this.points) {
      if (!point.own && this.rings(part).length > 0 && inside(point.at, this.rings(part)[0] ?? [])) {
        point.parts.push(part.key);
      }
    }
    return part;
  }

  leaveOut(key: string): void {
    this.parts = this.parts.filter((part) => part.key !== key);
    for (const part of this.parts) if (part.glued === key) part.glued = "";
    for (const point of this.points) point.parts = point.parts.filter((part) => part !== key);
  }

  partOf(shape: BroughtShape, file: number): PartEntry | undefined {
    return this.parts.find((part) => part.shape.key === shape.key && part.file === file);
  }

  /** A point of the maker's own, on the parts that lie there. */
  setPoint(at: Pair): PointEntry {
    const point: PointEntry = {
      key: `own${++this.count}`,
      name: this.unused("point"),
      at,
      radius: 1.5,
      role: "none",
      parts: this.partsAt(at),
      grams: 10,
      own: true,
    };
    point.role = point.parts.length > 1 ? "pin" : "none";
    this.points.push(point);
    return point;
  }

  movePoint(point: PointEntry, at: Pair): void {
    point.at = at;
    point.parts = this.partsAt(at);
  }

  partsAt(at: Pair): string[] {
    return this.parts.filter((part) => inside(at, this.rings(part)[0] ?? [])).map((part) => part.key);
  }

  /** Moves all that came with a further file. */
  moveFile(file: number, by: Pair): void {
    const moved = this.files[file];
    if (!moved) return;
    moved.shift = [moved.shift[0] + by[0], moved.shift[1] + by[1]];
    for (const point of this.points) {
      if (!point.own && point.key.startsWith(`${file}:`)) point.at = [point.at[0] + by[0], point.at[1] + by[1]];
    }
  }

  rings(part: PartEntry): Pair[][] {
    const [dx, dy] = this.files[part.file]?.shift ?? [0, 0];
    return dx === 0 && dy === 0 ? part.shape.rings : part.shape.rings.map((ring) => ring.map(([x, y]) => [x + dx, y + dy]));
  }

  moved([x, y]: Pair, file: number): Pair {
    const [dx, dy] = this.files[file]?.shift ?? [0, 0];
    return [x + dx, y + dy];
  }

  get bounds(): { minX: number; minY: number; maxX: number; maxY: number } {
    const all = this.files.flatMap((f, i) => f.read.shapes.flatMap((s) => (s.rings[0] ?? []).map((p) => this.moved(p, i))));
    const [xs, ys] = [all.map((p) => p[0]), all.map((p) => p[1])];
    const least = (values: number[]): number => values.reduce((a, b) => Math.min(a, b), Infinity);
    const most = (values: number[]): number => values.reduce((a, b) => Math.max(a, b), -Infinity);
    return all.length === 0
      ? { minX: 0, minY: 0, maxX: 100, maxY: 100 }
      : { minX: least(xs), minY: least(ys), maxX: most(xs), maxY: most(ys) };
  }

  /** What was said, as the server reads it. */
  get plan(): BringPlan {
    const name = new Map(this.parts.map((part) => [part.key, part.name]));
    const lines = this.files.flatMap((file, i) =>
      file.read.lines.flatMap((line) => {
        const part = this.parts.find((p) => p.file === i && p.shape.key === line.on);
        return part ? [{ part: part.name, points: line.points.map((p) => this.moved(p, i)) }] : [];
      }),
    );
    return {
      name: this.title,
      box: this.box,
      scale: this.files[0]?.read.scale ?? 1,
      placed: this.placed,
      shift: this.shift,
      parts: this.parts.map((part) => ({
        name: part.name,
        rings: this.rings(part),
        stock: part.stock,
        layer: part.layer,
        body: this.body(part),
        paint: (part.painted && part.shape.paint) || "",
      })),
      points: this.points.map((point) => ({
        name: point.name,
        at: point.at,
        radius: point.radius,
        role: point.role,
        parts: point.parts.map((key) => name.get(key) ?? ""),
        grams: point.grams,
      })),
      lines,
    };
  }

  /** The word that all parts of one body have in common. */
  private body(part: PartEntry): string {
    const seen = new Set<string>();
    let at: PartEntry | undefined = part;
    while (at && at.glued !== "" && at.glued !== "box" && !seen.has(at.key)) {
      seen.add(at.key);
      const next: string = at.glued;
      at = this.parts.find((p) => p.key === next);
    }
    if (!at) return "";
    if (at.glued === "box") return "box";
    const root = at.key;
    return this.parts.some((p) => p.key !== root && p.glued === root) || root !== part.key ? root : "";
  }

  private unused(wanted: string): string {
    const taken = new Set([...this.parts, ...this.points].map((entry) => entry.name));
    if (wanted !== "part" && wanted !== "point" && !taken.has(wanted)) return wanted;
    for (let i = 1; ; i++) if (!taken.has(`${wanted}-${i}`)) return `${wanted}-${i}`;
  }

  private middleOf(read: Brought): Pair {
    const { minX, minY, maxX, maxY } = this.bounds;
    return [(minX + maxX - read.width) / 2, (minY + maxY - read.height) / 2];
  }
}

/** A word that files take for a name: small letters, digits, hyphens. */
export function plain(words: string): string {
  return words
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^[^a-z]+|-+$/g, "")
    .slice(0, 40);
}

/** A design's first name, from its file's. */
const titled = (file: string): string => {
  const words = file.replace(/\.[^.]*$/, "").replace(/[^\p{L}\p{N}]+/gu, " ").trim();
  return words.slice(0, 1).toUpperCase() + words.slice(1, 60);
};

/** Whether a point lies within a closed line. */
export function inside([x, y]: Pair, ring: Pair[]): boolean {
  let within = false;
  let [bx, by] = ring[ring.length - 1] ?? [0, 0];
  for (const [ax, ay] of ring) {
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) within = !within;
    [bx, by] = [ax, ay];
  }
  return within;
}
