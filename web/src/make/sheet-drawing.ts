/** Kinds of lines in a sheet's file, by the ids of its groups. */
const KINDS = ["engrave", "inside-cuts", "outside-cuts", "marks"];
const SVG = "http://www.w3.org/2000/svg";

/** A piece that lies on a sheet. */
export interface Lying {
  name: string;
  shape: SVGElement;
}

/** A sheet's file as a drawing on the page. */
export interface SheetPicture {
  svg: SVGSVGElement;
  /** In the order in which they lie, left to right. */
  pieces: Lying[];
}

/**
 * Takes a sheet's file as it is cut, line by line, onto the page, and lays every piece over it once more so that it can be
 * pointed at.
 *
 * @param prefix of the pieces' ids on the page
 * @param offcut width and height of the offcut that would do, mm
 */
export function sheetPicture(file: string, prefix: string, offcut: [number, number]): SheetPicture {
  const { svg, width, height } = lines(file);
  const pieces = [...svg.querySelectorAll<SVGElement>(".cut-outside-cuts > *")].map((line) => piece(line, prefix));
  // The larger ones lie beneath: what lies in an opening can be pointed at.
  const sizes = new Map(pieces.map(({ shape }) => [shape, extent(shape)]));
  const order = [...pieces].sort((a, b) => (sizes.get(b.shape)?.area ?? 0) - (sizes.get(a.shape)?.area ?? 0));
  svg.append(...order.map(({ shape }) => shape));
  svg.prepend(ground(width, height, offcut));
  pieces.sort((a, b) => (sizes.get(a.shape)?.left ?? 0) - (sizes.get(b.shape)?.left ?? 0));
  return { svg, pieces };
}

/** Test pieces, which are looked at alone. */
export function testPicture(file: string): SVGSVGElement {
  const { svg, width, height } = lines(file);
  svg.prepend(ground(width, height, null));
  return svg;
}

/** The file's own lines: told apart by our own style, their ids as `data-cut`. */
function lines(file: string): { svg: SVGSVGElement; width: number; height: number } {
  const parsed = new DOMParser().parseFromString(file, "image/svg+xml").documentElement;
  const svg = document.importNode(parsed, true) as unknown as SVGSVGElement;
  const [, , width = 0, height = 0] = (svg.getAttribute("viewBox") ?? "").split(" ").map(Number);
  svg.removeAttribute("width");
  svg.removeAttribute("height");
  svg.querySelector("title")?.remove();
  svg.setAttribute("class", "sheet-drawing");
  for (const group of svg.querySelectorAll("g")) {
    if (KINDS.includes(group.id)) group.setAttribute("class", `cut-${group.id}`);
  }
  for (const named of svg.querySelectorAll("[id]")) {
    named.setAttribute("data-cut", named.id);
    named.removeAttribute("id");
  }
  return { svg, width, height };
}

function piece(line: SVGElement, prefix: string): Lying {
  const name = line.getAttribute("data-cut") ?? "";
  const shape = line.cloneNode() as SVGElement;
  shape.removeAttribute("data-cut");
  shape.setAttribute("class", "lying");
  shape.setAttribute("data-piece", name);
  shape.id = `${prefix}-${name}`;
  shape.setAttribute("role", "option");
  shape.setAttribute("aria-label", name);
  shape.setAttribute("aria-selected", "false");
  return { name, shape };
}

/** By the numbers of its path, which are all corners. */
function extent(shape: SVGElement): { left: number; area: number } {
  const numbers = (shape.getAttribute("d") ?? "").match(/-?[\d.]+/g)?.map(Number) ?? [];
  const xs = numbers.filter((_, i) => i % 2 === 0);
  const ys = numbers.filter((_, i) => i % 2 === 1);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { left, area: (right - left) * (bottom - top) };
}

function ground(width: number, height: number, offcut: [number, number] | null): Element {
  const group = document.createElementNS(SVG, "g");
  const rect = (kind: string, w: number, h: number): void => {
    const rect = document.createElementNS(SVG, "rect");
    rect.setAttribute("class", kind);
    rect.setAttribute("y", String(height - h));
    rect.setAttribute("width", String(w));
    rect.setAttribute("height", String(h));
    group.append(rect);
  };
  rect("ground", width, height);
  if (offcut) rect("offcut", Math.min(width, offcut[0]), Math.min(height, offcut[1]));
  return group;
}
