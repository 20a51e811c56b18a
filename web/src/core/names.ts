/** Paths of the design's files in a maker's words. */

const SECTIONS: Record<string, string> = {
  parts: "part",
  pins: "pin",
  slides: "slide",
  stops: "stop",
  limits: "limit",
  gears: "gear",
  meshes: "mesh",
  racks: "rack",
  cams: "cam",
  pawls: "pawl",
  strings: "string",
  touches: "touch",
  springs: "spring",
  torques: "torque",
  weights: "weight",
  pictures: "picture",
  cloths: "cloth",
};

/** `figure.pins.hip.at` as "pin hip"; `box.coin-works.bucket.lip` as "bucket lip". */
export function placeName(path: string): string {
  const [, section = "", ...rest] = path.split(".");
  const kind = SECTIONS[section];
  if (kind) {
    const [name = "", ...inner] = rest;
    const which = inner
      .filter((word) => word !== "at" && word !== "over")
      .map((word) => (/^\d+$/.test(word) ? `guide ${Number(word) + 1}` : word))
      .join(" ");
    return `${kind} ${name}${which ? `, ${which}` : ""}`;
  }
  return (section === "coin-works" ? rest : [section, ...rest]).filter((word) => word !== "at").join(" ");
}

/** The number's own word: `figure.weights.tail.mass` as "mass". */
export function numberName(path: string, entry: string): string {
  return path
    .slice(entry.length + 1)
    .split(".")
    .map((word) => (/^\d+$/.test(word) ? String(Number(word) + 1) : word.replaceAll("-", " ")))
    .join(" ");
}

/** The whole of a number in words: "tail: mass". */
export function numberWords(path: string): string {
  const words = path.split(".");
  return `${placeName(words.slice(0, -1).join("."))}: ${(words.at(-1) ?? "").replaceAll("-", " ")}`;
}
