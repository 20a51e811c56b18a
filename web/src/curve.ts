import { html, svg, type TemplateResult } from "lit";
import type { Report, Way } from "./api.js";
import { type Direction, force } from "./motion.js";

const WIDTH = 360;
const HEIGHT = 150;
const LEFT = 46;
const BOTTOM = 30;
const TOP = 12;

/** Finger force over the stroke, pressing and returning, with a cursor where the lever stands. */
export function forceCurve(report: Report, stroke: number, direction: Direction): TemplateResult {
  const ways: [Direction, Way][] = [
    ["pressing", report.motion.pressing],
    ["returning", report.motion.returning],
  ];
  const all = ways.flatMap(([, way]) => way.forceN.filter((f): f is number => f != null));
  if (all.length === 0) return html``;
  const most = Math.max(...all, 0);
  const least = Math.min(...all, 0);
  const span = most - least || 1;
  const x = (u: number): number => LEFT + u * (WIDTH - LEFT - 12);
  const y = (f: number): number => TOP + ((most - f) / span) * (HEIGHT - TOP - BOTTOM);
  const line = (way: Way): string => {
    let pen = "M";
    return way.forceN
      .map((f, i) => {
        if (f == null) {
          pen = "M";
          return "";
        }
        const point = `${pen}${x(way.stroke[i] ?? 0).toFixed(1)} ${y(f).toFixed(1)}`;
        pen = "L";
        return point;
      })
      .join("");
  };
  const now = force(report.motion[direction], stroke);
  return html`<figure class="curve">
    <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="Finger force over the stroke">
      ${svg`
        <path class="axis" d="M${LEFT} ${TOP}V${y(least)} M${LEFT} ${y(0)}H${WIDTH - 12}"></path>
        <text x=${LEFT - 6} y=${y(most) + 5} text-anchor="end">${most.toFixed(2)}</text>
        <text x=${LEFT + 6} y=${TOP} class="unit">N</text>
        <text x=${LEFT - 6} y=${y(0) + 5} text-anchor="end">0</text>
        ${least < 0 ? svg`<text x=${LEFT - 6} y=${y(least) + 5} text-anchor="end">${least.toFixed(2)}</text>` : ""}
        <text x=${x(0)} y=${HEIGHT - 6} text-anchor="start">rest</text>
        <text x=${x(0.5)} y=${HEIGHT - 6} text-anchor="middle">stroke</text>
        <text x=${x(1)} y=${HEIGHT - 6} text-anchor="end">fully pressed</text>
        ${ways.map(([name, way]) => svg`<path class="line ${name}" d=${line(way)}></path>`)}
        ${now == null ? "" : svg`<circle class="cursor" cx=${x(stroke)} cy=${y(now)} r="5"></circle>`}`}
    </svg>
    <figcaption>
      Finger force: solid while pressing, dashed while coming back; dashed below 0, it hangs.
    </figcaption>
  </figure>`;
}
