import type { Body, DesignView, Finding, Glimpse, Report, Status, Step, FieldValue } from "./api.js";

const RANK: Record<Status, number> = { fail: 3, doubtful: 2, open: 1, pass: 0 };

/**
 * A saved design with what a glimpse tells: parts, pictures and cloth that it leaves
 * out are as saved, so are findings it does not ask.
 */
export function merged(view: DesignView, glimpse: Glimpse): DesignView {
  const saved = new Map(view.scene.bodies.map((body) => [body.name, body]));
  const bodies = glimpse.scene.bodies.map((body) => withSavedParts(body, saved.get(body.name)));
  const findings = mergedFindings(view.report.findings, glimpse.findings);
  const worst = Math.max(0, ...findings.map((finding) => RANK[finding.status]));
  const report: Report = {
    ...view.report,
    motion: glimpse.motion,
    findings,
    verdict: worst === RANK.fail ? "fails" : worst === RANK.doubtful ? "doubtful" : "works",
  };
  const { pictures, cloths } = view.scene;
  return { ...view, scene: { ...glimpse.scene, bodies, pictures, cloths }, report };
}

function withSavedParts(body: Body, saved: Body | undefined): Body {
  if (!saved) return body;
  const changed = new Map(body.parts.map((part) => [part.name, part]));
  return { ...body, parts: saved.parts.map((part) => changed.get(part.name) ?? part) };
}

/** A glimpse knows no spread: what was doubtful stays so while it passes as numbered. */
function mergedFindings(saved: Finding[], quick: Finding[]): Finding[] {
  const asked = new Map(quick.map((finding) => [finding.id, finding]));
  const known = new Set(saved.map((finding) => finding.id));
  const all = saved.map((finding) => {
    const now = asked.get(finding.id);
    if (!now) return finding;
    const doubtful = finding.status === "doubtful" && now.status === "pass";
    return { ...now, restsOn: finding.restsOn, status: doubtful ? finding.status : now.status };
  });
  const fresh = quick.filter((finding) => !known.has(finding.id));
  return [...all, ...fresh].sort((a, b) => RANK[b.status] - RANK[a.status]);
}

/** What stands at a path of a design, as words that can be compared and shown. */
export function valueAt(view: DesignView, path: string): string {
  const number = view.changeable.settings.find((setting) => setting.path === path);
  if (number) return String(number.value);
  const spot = view.changeable.spots.find((other) => other.paths.includes(path));
  if (spot) return `[${spot.at.join(", ")}]`;
  return view.changeable.entries.some((entry) => entry.path === path) ? "there" : "nothing";
}

/** Whether two values say the same: "26" and "26.0", "[1, 2]" and "[1,2]". */
export function sameValue(one: string, other: string): boolean {
  const plain = (value: string): string => value.replace(/\s+/g, "").replace(/-?\d+(\.\d+)?/g, (n) => String(Number(n)));
  return plain(one) === plain(other);
}

export const set = (path: string, value: FieldValue): Step => ({ kind: "set", path, value });

/** A value of a change, as words that can be compared and shown. */
export function asWords(value: FieldValue): string {
  if (typeof value !== "object") return String(value);
  return Array.isArray(value) ? `[${value.map(asWords).join(", ")}]` : JSON.stringify(value);
}
