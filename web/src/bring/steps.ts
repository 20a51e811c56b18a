import { html, type TemplateResult } from "lit";
import type { Grounds } from "../core/api.js";
import { type Figure, plain, type PartEntry, type PointEntry, type Role } from "./model.js";
import { lengthsShown } from "../core/units.js";

/** Tells the dialogue that something was said. */
export type Said = () => void;

const ROLES: [Role, string][] = [
  ["none", "nothing"],
  ["pin", "a pin through these parts"],
  ["post", "they turn here, on a post made for it"],
  ["lift", "the lever lifts here, by a rod made for it"],
  ["pull", "the lever pulls down here, by a rod made for it"],
  ["cord", "a cord from here to the lever"],
  ["lever", "pinned to the lever itself"],
  ["weight", "a weight is fixed here"],
  ["hole", "a hole"],
];

const value = (e: Event): string => (e.target as HTMLInputElement | HTMLSelectElement).value;

/** Buttons for all parts, for the keyboard and for what hides behind others. */
export function partList(figure: Figure, chosen: string, pick: (key: string) => void): TemplateResult {
  return html`<div class="names" role="group" aria-label="Parts">
    ${figure.parts.map(
      (part) =>
        html`<button type="button" aria-pressed=${part.key === chosen ? "true" : "false"} @click=${() => pick(part.key)}>
          ${part.name}
        </button>`,
    )}
  </div>`;
}

/** One part: its name, what it is made of, what holds it, where it lies. */
export function partPanel(figure: Figure, part: PartEntry, grounds: Grounds, said: Said): TemplateResult {
  const set = (change: Partial<PartEntry>): void => {
    Object.assign(part, change);
    said();
  };
  const further = figure.files.length > 1 && part.file > 0;
  const nudge = (x: number, y: number) => (): void => {
    figure.moveFile(part.file, [x, y]);
    said();
  };
  return html`<div class="panel" data-panel="part">
    <label>Name <input class="name" .value=${part.name} @change=${(e: Event) => set({ name: plain(value(e)) || part.name })} /></label>
    <label
      >Made of
      <select class="stock" @change=${(e: Event) => set({ stock: value(e) })}>
        ${grounds.sheets.map(
          (s) => html`<option value=${s.name} .selected=${s.name === part.stock}>${s.name} (${lengthsShown([s.thickness], 2)})</option>`,
        )}
      </select></label
    >
    <label
      >It
      <select class="glued" @change=${(e: Event) => set({ glued: value(e) })}>
        <option value="" .selected=${part.glued === ""}>moves by itself</option>
        <option value="box" .selected=${part.glued === "box"}>stands on the box</option>
        ${figure.parts
          .filter((p) => p !== part && p.glued !== part.key)
          .map((p) => html`<option value=${p.key} .selected=${p.key === part.glued}>is glued to ${p.name}</option>`)}
      </select></label
    >
    <p class="layer">
      Layer ${part.layer} from the back
      <button type="button" ?disabled=${part.layer <= 1} @click=${() => set({ layer: part.layer - 1 })}>further back</button>
      <button type="button" @click=${() => set({ layer: part.layer + 1 })}>further forward</button>
    </p>
    ${part.shape.paint
      ? html`<label class="check"
          ><input type="checkbox" .checked=${part.painted} @change=${() => set({ painted: !part.painted })} /> painted as drawn</label
        >`
      : ""}
    ${further
      ? html`<p class="layer">
          Move it
          <button type="button" @click=${nudge(-1, 0)}>left</button> <button type="button" @click=${nudge(1, 0)}>right</button>
          <button type="button" @click=${nudge(0, 1)}>up</button> <button type="button" @click=${nudge(0, -1)}>down</button> by ${lengthsShown([1])}
        </p>`
      : ""}
    <p class="quiet">
      ${lengthsShown([part.shape.width, part.shape.height], 1)}${part.shape.twins > 0
        ? `; drawn ${part.shape.twins + 1} times, taken as one`
        : ""}
    </p>
    <p class="buttons">
      <button
        type="button"
        class="plain"
        @click=${() => {
          figure.choose(part.shape, part.file);
          said();
        }}
      >
        One more like it
      </button>
      <button
        type="button"
        class="plain"
        @click=${() => {
          figure.leaveOut(part.key);
          said();
        }}
      >
        Leave it out
      </button>
    </p>
  </div>`;
}

export function pointList(figure: Figure, chosen: string, pick: (key: string) => void): TemplateResult {
  return html`<div class="names" role="group" aria-label="Points">
    ${figure.points.map(
      (point) =>
        html`<button
          type="button"
          class=${point.role === "none" ? "idle" : ""}
          aria-pressed=${point.key === chosen ? "true" : "false"}
          @click=${() => pick(point.key)}
        >
          ${point.name}
        </button>`,
    )}
  </div>`;
}

/** One point: what it is for and which parts it goes through. */
export function pointPanel(figure: Figure, point: PointEntry, said: Said): TemplateResult {
  const set = (change: Partial<PointEntry>): void => {
    Object.assign(point, change);
    said();
  };
  const step = (event: KeyboardEvent): void => {
    const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (!by || !point.own) return;
    event.preventDefault();
    const far = event.shiftKey ? 5 : 1;
    figure.movePoint(point, [point.at[0] + (by[0] ?? 0) * far, point.at[1] + (by[1] ?? 0) * far]);
    said();
  };
  const here = new Set([...figure.partsAt(point.at), ...point.parts]);
  return html`<div class="panel" data-panel="point">
    <label>Name <input class="name" .value=${point.name} @change=${(e: Event) => set({ name: plain(value(e)) || point.name })} /></label>
    <label
      >It is
      <select class="role" @change=${(e: Event) => set({ role: value(e) as Role })}>
        ${ROLES.map(([role, words]) => html`<option value=${role} .selected=${role === point.role}>${words}</option>`)}
      </select></label
    >
    ${point.role === "weight"
      ? html`<label>How heavy <span><input class="grams" inputmode="decimal" .value=${String(point.grams)} @change=${(e: Event) => set({ grams: Number(value(e).replace(",", ".")) || 0 })} /> g</span></label>`
      : ""}
    <fieldset ?hidden=${point.role === "none"}>
      <legend>Parts here</legend>
      ${figure.parts
        .filter((part) => here.has(part.key))
        .map(
          (part) =>
            html`<label class="check"
              ><input
                type="checkbox"
                .checked=${point.parts.includes(part.key)}
                @change=${() =>
                  set({
                    parts: point.parts.includes(part.key)
                      ? point.parts.filter((key) => key !== part.key)
                      : [...point.parts, part.key],
                  })}
              />
              ${part.name}</label
            >`,
        )}
    </fieldset>
    ${point.own
      ? html`<p class="buttons">
          <button type="button" class="mover" @keydown=${step}>Move it with the arrow keys, or drag it</button>
          <button
            type="button"
            class="plain"
            @click=${() => {
              figure.points = figure.points.filter((p) => p !== point);
              said();
            }}
          >
            Take it away
          </button>
        </p>`
      : ""}
  </div>`;
}
