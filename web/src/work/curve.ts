import { html, svg, type TemplateResult } from "lit";
import type { Finding, Pair, Report, Scene, Way } from "../core/api.js";
import { carried, type Direction, force, placed } from "../core/motion.js";
import { rides } from "./swept.js";
import { shownIn } from "../core/units.js";

const WIDTH = 250;
const HEIGHT = 128;
const LEFT = 46;
const BOTTOM = 30;
const TOP = 12;
const MM_PER_INCH = 25.4;

interface Curve {
  /** What is drawn, for those who do not see it. */
  title: string;
  unit: string;
  lines: { name: string; values: (number | null)[] }[];
  /** A value to be reached. */
  wanted: number | null;
  now: number | null;
  caption: TemplateResult | string;
}

/** Finger force over the stroke, pressing and returning. */
export function forceCurve(report: Report, stroke: number, direction: Direction): TemplateResult {
  const { pressing, returning } = report.motion;
  return drawn(stroke, {
    title: "Finger force over the stroke",
    unit: "N",
    lines: [
      { name: "pressing", values: pressing.forceN },
      { name: "returning", values: returning.forceN },
    ],
    wanted: null,
    now: force(report.motion[direction], stroke),
    caption: "Finger force; dashes: coming back",
  });
}

/** How far each gesture's point has gone over the stroke, and how far it is to go. */
export function gestureCurves(scene: Scene, report: Report, stroke: number): TemplateResult[] {
  return report.findings
    .filter((finding) => finding.topic === "gesture-reached" && finding.where.at != null)
    .map((finding) => {
      const name = finding.about;
      const way = report.motion.pressing;
      const inch = shownIn() === "in";
      const scale = inch ? 1 / MM_PER_INCH : 1;
      const values = over(report, `${finding.id} ${scale}`, () =>
        way.stroke.map((u) => travelled(scene, finding, way, u) * scale),
      );
      return drawn(stroke, {
        title: `How far the ${name} has gone over the stroke`,
        unit: inch ? "in" : "mm",
        lines: [{ name: "pressing", values }],
        wanted: finding.limit == null ? null : finding.limit * scale,
        now: travelled(scene, finding, way, stroke) * scale,
        caption: `How far the ${name} goes${finding.limit == null ? "" : "; dots: wanted"}`,
      });
    });
}

const known = new WeakMap<Report, Map<string, number[]>>();

/** Worked out once for each report. */
function over(report: Report, name: string, work: () => number[]): number[] {
  const lines = known.get(report) ?? new Map<string, number[]>();
  known.set(report, lines);
  const values = lines.get(name) ?? work();
  lines.set(name, values);
  return values;
}

function travelled(scene: Scene, finding: Finding, way: Way, stroke: number): number {
  const body = rides(scene, finding);
  const at = finding.where.at as Pair;
  if (!body) return 0;
  const [x, y] = carried(body, placed(way, body, stroke), at);
  return Math.hypot(x - at[0], y - at[1]);
}

function drawn(stroke: number, curve: Curve): TemplateResult {
  const all = curve.lines.flatMap(({ values }) => values.filter((v): v is number => v != null));
  if (all.length === 0) return html``;
  const most = Math.max(...all, curve.wanted ?? 0, 0);
  const least = Math.min(...all, 0);
  const span = most - least || 1;
  const x = (u: number): number => LEFT + u * (WIDTH - LEFT - 12);
  const y = (v: number): number => TOP + ((most - v) / span) * (HEIGHT - TOP - BOTTOM);
  const places = most < 10 ? 2 : 0;
  return html`<figure class="curve">
    <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${curve.title}>
      ${svg`
        <path class="axis" d="M${LEFT} ${TOP}V${y(least)} M${LEFT} ${y(0)}H${WIDTH - 12}"></path>
        <text x=${LEFT - 6} y=${y(most) + 5} text-anchor="end">${most.toFixed(places)}</text>
        <text x=${LEFT + 6} y=${TOP} class="unit">${curve.unit}</text>
        <text x=${LEFT - 6} y=${y(0) + 5} text-anchor="end">0</text>
        ${y(least) - y(0) > 14 ? svg`<text x=${LEFT - 6} y=${y(least) + 5} text-anchor="end">${least.toFixed(places)}</text>` : ""}
        <text x=${x(0)} y=${HEIGHT - 6} text-anchor="start">rest</text>
        <text x=${x(1)} y=${HEIGHT - 6} text-anchor="end">fully pressed</text>
        ${curve.wanted == null ? "" : svg`<path class="wanted" d="M${LEFT} ${y(curve.wanted)}H${WIDTH - 12}"></path>`}
        ${curve.lines.map(({ name, values }) => svg`<path class="line ${name}" d=${line(values, x, y)}></path>`)}
        ${curve.now == null ? "" : svg`<circle class="cursor" cx=${x(stroke)} cy=${y(curve.now)} r="6"></circle>`}`}
    </svg>
    <figcaption>${curve.caption}</figcaption>
  </figure>`;
}

const drawnLines = new WeakMap<(number | null)[], string>();

/** A line with gaps where nothing was computed. */
function line(values: (number | null)[], x: (u: number) => number, y: (v: number) => number): string {
  const known = drawnLines.get(values);
  if (known !== undefined) return known;
  let pen = "M";
  const path = values
    .map((value, i) => {
      if (value == null) {
        pen = "M";
        return "";
      }
      const point = `${pen}${x(i / Math.max(1, values.length - 1)).toFixed(1)} ${y(value).toFixed(1)}`;
      pen = "L";
      return point;
    })
    .join("");
  drawnLines.set(values, path);
  return path;
}
