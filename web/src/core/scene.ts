import { svg, type TemplateResult } from "lit";
import type { Body, On, Pair, Part, Pin, Scene } from "./api.js";
import { carried, type Placed, transform } from "./motion.js";

export interface SceneState {
  scene: Scene;
  /** Where each body stands now. */
  place(body: Body): Placed;
  /** Whether the frontmost panel of the box is in place. */
  frontOn: boolean;
  /** Where the pictures on its parts are had, but for the part's name; left out, none is shown. */
  pictures?: string;
  /** A coin under way. */
  coin: { at: Pair; angle: number; radius: number } | null;
}

interface Drawn {
  layer: number;
  body?: Body;
  part?: Part;
  pin?: Pin;
}

const ringPath = (ring: Pair[], close: boolean): string =>
  ring.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x} ${y}`).join("") + (close ? "Z" : "");

const paths = new WeakMap<Part, string>();

function outline(part: Part): string {
  let path = paths.get(part);
  if (path === undefined) {
    path = part.rings.map((ring) => ringPath(ring, true)).join("");
    paths.set(part, path);
  }
  return path;
}

const orders = new WeakMap<Scene, Drawn[]>();

/** Parts and pins of all bodies, back to front, and the place of a coin among them. */
function order(scene: Scene): Drawn[] {
  let order = orders.get(scene);
  if (!order) {
    order = [{ layer: scene.coinWorks.layer + 0.25 }];
    for (const body of scene.bodies) {
      for (const part of body.parts) order.push({ layer: part.layer, body, part });
    }
    for (const pin of scene.pins) {
      const body = scene.bodies.find((b) => b.name === pin.body);
      if (body) order.push({ layer: pin.layer + 0.5, body, pin });
    }
    order.sort((a, b) => a.layer - b.layer);
    orders.set(scene, order);
  }
  return order;
}

const frontLayer = (scene: Scene): number =>
  Math.max(...scene.bodies.flatMap((b) => b.parts.filter((p) => p.ofBox).map((p) => p.layer)));

/** Box and figure from the side; the caller puts this into an <svg> with y up. */
export function sceneDrawing(state: SceneState): TemplateResult {
  const { scene } = state;
  const front = frontLayer(scene);
  const places = new Map(scene.bodies.map((body) => [body.name, state.place(body)]));
  const where = new Map(scene.bodies.map((body) => [body.name, transform(body, places.get(body.name) as Placed)]));
  const isFront = (part: Part): boolean => part.ofBox && part.layer === front;
  return svg`
    ${order(scene).map(({ body, part, pin }) => {
      const to = body ? (where.get(body.name) ?? "") : "";
      if (!body) return state.coin ? coinDrawing(state.coin) : svg``;
      if (pin) {
        return svg`<g transform=${to}><circle class="pin" cx=${pin.at[0]} cy=${pin.at[1]} r=${pin.radius}></circle></g>`;
      }
      if (!part) return svg``;
      const open = isFront(part) && !state.frontOn;
      // What lies deeper is darker.
      const shade = 0.34 * (1 - part.layer / Math.max(1, front));
      return svg`<g data-body=${body.name} transform=${to}>${partDrawing(part, open, shade)}${
        open || state.pictures === undefined ? "" : picture(scene, part, state.pictures)
      }${cloths(scene, body, part)}</g>`;
    })}
    ${scene.bodies.map(
      (body) => svg`<g class="hidden-lines" transform=${where.get(body.name) ?? ""}>
        ${body.parts.filter((p) => !isFront(p)).map((p) => svg`<path d=${outline(p)}></path>`)}
        ${body.weights.map((w) => svg`<circle class="weight" cx=${w.at[0]} cy=${w.at[1]} r=${w.radius}></circle>`)}
      </g>`,
    )}
    ${scene.strings.map(
      (cord) => svg`<path class="cord" d=${ringPath(cordPath(scene, places, cord.points), false)}></path>`,
    )}`;
}

/** A coin as it lies in the plane, with a mark by which its rolling is seen. */
function coinDrawing({ at, angle, radius }: { at: Pair; angle: number; radius: number }): TemplateResult {
  return svg`<g class="coin" transform=${`translate(${at[0]} ${at[1]}) rotate(${angle})`}>
    <circle r=${radius}></circle>
    <circle class="rim" r=${radius * 0.86}></circle>
    <path d=${`M0 ${radius * 0.3}V${radius * 0.7}`}></path>
  </g>`;
}

/** A string from end to end by the middles of its guides; a slack one is drawn straight as well. */
function cordPath(scene: Scene, places: Map<string, Placed>, points: On[]): Pair[] {
  return points.map(({ body: name, at }) => {
    const body = scene.bodies.find((b) => b.name === name);
    const to = places.get(name);
    return body && to ? carried(body, to, at) : at;
  });
}

/** The printed picture on a part, cut off at its edge. */
function picture(scene: Scene, part: Part, from: string): TemplateResult {
  const picture = scene.pictures.find((one) => one.part === part.name);
  if (!picture) return svg``;
  const { at, width, height, state } = picture;
  const id = `edge-of-${part.name}`;
  return svg`<clipPath id=${id}><path d=${outline(part)} clip-rule="evenodd"></path></clipPath>
    <g clip-path=${`url(#${id})`}>
      <image class="picture" data-picture=${part.name} transform=${`translate(${at[0]} ${at[1] + height}) scale(1 -1)`}
        width=${width} height=${height} preserveAspectRatio="none"
        href=${`${from}?${new URLSearchParams({ part: part.name, state })}`}></image>
    </g>`;
}

/** Cloth as it hangs at rest, over the frontmost of the parts that carry it. */
function cloths(scene: Scene, body: Body, part: Part): TemplateResult[] {
  return scene.cloths
    .filter((cloth) => cloth.body === body.name && cloth.layer === part.layer)
    .filter(() => body.parts.filter(({ layer }) => layer === part.layer).at(-1) === part)
    .map((cloth) => svg`<path class="cloth" data-cloth=${cloth.name} d=${ringPath(cloth.ring, true)}></path>`);
}

function partDrawing(part: Part, open: boolean, shade: number): TemplateResult {
  const path = outline(part);
  if (open) {
    return svg`<path class="taken-off" data-part=${part.name} d=${path}></path>`;
  }
  return svg`
    <path class="part ${part.material}" data-part=${part.name} d=${path} fill=${part.paint ?? ""}></path>
    ${part.material === "wood" ? svg`<path class="grain" d=${path}></path>` : ""}
    ${part.ofBox ? svg`<path class="shade" d=${path} fill-opacity=${shade.toFixed(2)}></path>` : ""}
    ${part.engraving.map((line) => svg`<path class="engraved" d=${ringPath(line, false)}></path>`)}`;
}
