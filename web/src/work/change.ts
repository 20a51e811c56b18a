import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { DesignView, Entry, Setting, Step } from "../core/api.js";
import { adding } from "./adding.js";
import type { Desk } from "../core/desk.js";
import { set } from "../core/merge.js";
import { numberName, placeName } from "../core/names.js";
import { fieldUnit, fieldValue, typed } from "../core/units.js";

const SECTIONS: [string, string][] = [
  ["weights", "Weights"],
  ["strings", "Strings"],
  ["pins", "Pins"],
  ["slides", "Slides"],
  ["stops", "Stops"],
  ["limits", "Limits"],
  ["springs", "Springs"],
  ["torques", "Torques"],
  ["gears", "Gears"],
  ["meshes", "Meshes"],
  ["racks", "Racks"],
  ["cams", "Cams"],
  ["pawls", "Pawls"],
  ["touches", "Touches"],
  ["parts", "Parts"],
  ["cloths", "Cloth"],
];

/** They go by the name of what they are on. */
const BY_THEIR_PART = ["pictures"];

/** Every number of a design in a field, everything on it with a way out, and what can be added. */
class ChangeIt extends LitElement {
  static override properties = { desk: { attribute: false }, openForm: { state: true }, renamed: { state: true } };

  desk: Desk | null = null;
  private openForm = "";
  /** The entry whose other name is being written; none when empty. */
  private renamed = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("desk")) this.desk?.watch(this);
  }

  protected override render(): TemplateResult {
    const view = this.desk?.view;
    if (!view) return html``;
    const shared = view.changeable.sharedWith;
    return html`<section class="changing" aria-labelledby="change-title">
      <h3 id="change-title">Change it</h3>
      <p>Drag the small rings on the drawing, or write a number here. It is saved at once; everything can be taken back.</p>
      ${shared.length === 0
        ? ""
        : html`<p class="small">
            Numbers and places are this design's own. What is added or taken out is in the figure's file, which
            ${shared.join(" and ")} ${shared.length === 1 ? "uses" : "use"} too.
          </p>`}
      ${this.lever(view)} ${sections(view).map(([section, title]) => this.section(view, section, title))}
    </section>`;
  }

  /** Numbers of the lever and the coin works, which are entries of no section. */
  private lever(view: DesignView): TemplateResult {
    const own = view.changeable.settings.filter(({ path }) => /^box\.(lever|coin-works)\./.test(path));
    return html`<details class="group" open>
      <summary>Lever and coin works</summary>
      <div class="fields">${repeat(own, key, (setting) => this.field(setting, placeName(setting.path)))}</div>
    </details>`;
  }

  private section(view: DesignView, section: string, title: string): TemplateResult {
    const entries = view.changeable.entries.filter((entry) => entry.section === section);
    const canAdd = ["weights", "strings", "pins", "parts"].includes(section);
    if (entries.length === 0 && !canAdd) return html``;
    return html`<details class="group" ?open=${section === "weights" || section === "strings"} data-section=${section}>
      <summary>${title}, ${entries.length}</summary>
      ${repeat(entries, (entry) => entry.path, (entry) => this.entry(view, entry))}
      ${canAdd ? this.form(view, section) : ""}
    </details>`;
  }

  private entry(view: DesignView, entry: Entry): TemplateResult {
    const own = view.changeable.settings.filter(({ path }) => path.startsWith(`${entry.path}.`));
    return html`<div class="entry" data-entry=${entry.path}>
      <div class="entry-row">
        ${this.renamed === entry.path ? this.renaming(entry) : html`<strong>${entry.name}</strong>`}
        <span class="about">${entry.about}</span>
        ${BY_THEIR_PART.includes(entry.section)
          ? ""
          : html`<button
              type="button"
              class="plain rename"
              aria-label=${`Rename ${placeName(entry.path)}`}
              @click=${() => (this.renamed = this.renamed === entry.path ? "" : entry.path)}
            >
              rename
            </button>`}
        <button
          type="button"
          class="plain take-out"
          aria-label=${`Take out ${placeName(entry.path)}`}
          @click=${() =>
            void this.desk?.edit(`${placeName(entry.path)} taken out`, [
              { kind: "remove", path: entry.path, value: "" },
            ])}
        >
          take out
        </button>
      </div>
      ${own.length === 0
        ? ""
        : html`<div class="fields">
            ${repeat(own, key, (setting) => this.field(setting, numberName(setting.path, entry.path)))}
          </div>`}
    </div>`;
  }

  /** Wherever it is named, it is called so from then on. */
  private renaming(entry: Entry): TemplateResult {
    const save = (event: Event): void => {
      const other = (event.target as HTMLInputElement).value.trim();
      if (other === "" || other === entry.name) {
        this.renamed = "";
        return;
      }
      const step: Step = { kind: "rename", path: entry.path, value: other };
      // What was refused stands there to be mended.
      void this.desk?.edit(`${placeName(entry.path)} renamed ${other}`, [step]).then((kept) => {
        if (kept) this.renamed = "";
      });
    };
    return html`<input
      class="other-name"
      data-rename=${entry.path}
      aria-label=${`Another name for ${entry.name}`}
      .value=${entry.name}
      @change=${save}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key === "Escape") this.renamed = "";
      }}
    />`;
  }

  private field(setting: Setting, name: string): TemplateResult {
    const shown = fieldValue(setting.value, setting.unit);
    const save = (event: Event): void => {
      const field = event.target as HTMLInputElement;
      const text = field.value.trim();
      if (text === shown) return;
      if (text === "") {
        field.value = shown;
        this.say(`${placeName(setting.path)} has to be some number: ${shown} was put back.`);
        return;
      }
      void this.desk?.edit(`${placeName(setting.path)}: ${text}`, [set(setting.path, typed(text, setting.unit))]).then(() => {
        // What was refused is not left standing.
        const now = this.desk?.view?.changeable.settings.find(({ path }) => path === setting.path);
        if (now) field.value = fieldValue(now.value, now.unit);
      });
    };
    return html`<label class="field" title=${hint(setting)}
      ><span>${name}</span>
      <span class="value"
        ><input data-setting=${setting.path} inputmode="decimal" .value=${shown} @change=${save} />
        <span class="unit">${fieldUnit(setting.unit)}</span></span
      ></label
    >`;
  }

  private form(view: DesignView, section: string): TemplateResult {
    const singular = section.slice(0, -1);
    if (this.openForm !== section) {
      return html`<p>
        <button type="button" class="plain add" data-add=${section} @click=${() => (this.openForm = section)}>
          Add a ${singular}
        </button>
      </p>`;
    }
    return adding(view, section, {
      add: (name, value) => {
        const step: Step = { kind: "add", path: `figure.${section}.${name}`, value };
        void this.desk?.edit(`${singular} ${name} added`, [step]).then((kept) => {
          if (kept) this.openForm = "";
        });
      },
      close: () => (this.openForm = ""),
      say: (words) => this.say(words),
    });
  }

  private say(words: string): void {
    if (this.desk) this.desk.note = words;
    this.desk?.changed();
  }
}

const key = (setting: Setting): string => setting.path;

/** What a number is, and what it may be: as the vocabulary says. */
function hint({ about, least, most, unit, why }: Setting): string {
  const bounds =
    least === null || most === null
      ? ""
      : `From ${fieldValue(least, unit)} to ${fieldValue(most, unit)} ${fieldUnit(unit)}: ${why}.`;
  return `${about} ${bounds}`.trim();
}

/** In our order; a kind of joint that is not in it comes last. */
function sections(view: DesignView): [string, string][] {
  const known = new Set(SECTIONS.map(([section]) => section));
  const others = new Set(view.changeable.entries.map(({ section }) => section).filter((section) => !known.has(section) && section !== "pictures"));
  return [...SECTIONS, ...[...others].map((section): [string, string] => [section, section.slice(0, 1).toUpperCase() + section.slice(1)])];
}

customElements.define("jackwork-change", ChangeIt);
