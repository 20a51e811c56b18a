// What the server sends; lengths in mm with y up, forces in N, angles in degrees.

export type Pair = [number, number];
/** Centre of mass x, y and turning since rest in degrees; null beyond the mechanism's reach. */
export type PoseEntry = [number | null, number | null, number | null];
export type Status = "pass" | "doubtful" | "fail";

export interface Part {
  name: string;
  layer: number;
  ofBox: boolean;
  material: string;
  paint: string | null;
  rings: Pair[][];
  engraving: Pair[][];
}

export interface Body {
  name: string;
  ground: boolean;
  centre: Pair;
  parts: Part[];
  weights: { name: string; at: Pair; radius: number }[];
}

export interface Pin {
  name: string;
  at: Pair;
  radius: number;
  /** The body that grips it. */
  body: string;
  layer: number;
}

export interface Scene {
  name: string;
  bounds: { minX: number; minY: number; maxX: number; maxY: number };
  bodies: Body[];
  pins: Pin[];
  strings: { name: string; points: { body: string; at: Pair }[] }[];
  lever: { body: string; press: Pair; pin: Pair; throwDeg: number };
}

export interface Ground {
  name: string;
  value: number;
  low: number;
  high: number;
  unit: string;
  basis: string;
  source: string;
}

export interface Finding {
  id: string;
  question: string;
  status: Status;
  value: number | null;
  limit: number | null;
  margin: number | null;
  unit: string;
  where: { part: string | null; stroke: number | null; at: Pair | null };
  why: string;
  remedy: string;
  formula: string;
  restsOn: Ground[];
}

export interface Way {
  stroke: number[];
  forceN: (number | null)[];
  parts: Record<string, PoseEntry[]>;
}

export interface Coin {
  coin: string;
  fits: boolean;
  trips: boolean;
  tripMomentNmm: number | null;
  needMomentNmm: number | null;
}

export interface Report {
  design: string;
  verdict: "works" | "doubtful" | "fails";
  findings: Finding[];
  motion: { pressing: Way; returning: Way };
  coins: Coin[];
}

export interface DesignView {
  id: string;
  scene: Scene;
  report: Report;
}

export interface WorkshopView {
  name: string;
  designs: { id: string; name: string }[];
}

interface Refusal {
  problem: string;
  remedy: string;
}

/** Fetches one of our own answers; whatever went wrong becomes an Error in plain words. */
export async function get<T>(path: string): Promise<T> {
  let response: Response;
  try {
    response = await fetch(path, { headers: { accept: "application/json" } });
  } catch {
    throw new Error("Jackwork does not answer.\nIs it still running? Start it again with: jackwork open");
  }
  if (response.ok) return (await response.json()) as T;
  let refusal: Refusal;
  try {
    refusal = (await response.json()) as Refusal;
  } catch {
    throw new Error(`The answer was ${response.status}, without a reason.\nLook where Jackwork was started.`);
  }
  throw new Error(refusal.remedy ? `${refusal.problem}\n${refusal.remedy}` : refusal.problem);
}
