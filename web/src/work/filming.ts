import { html, type TemplateResult } from "lit";
import type { CycleStage } from "../core/api.js";
import type { Playing, Slowness } from "./playing.js";

const STAGES: Record<CycleStage, string> = {
  lands: "the coin lands",
  frees: "the lever comes free",
  acts: "pressed all the way",
  thrown: "the coin is thrown",
  returns: "the lever is back",
  locks: "locked again",
  refuses: "a second press is refused",
};

const SPEEDS: [Slowness, string][] = [
  [1, "as it is"],
  [4, "4 times slower"],
  [20, "20 times slower"],
];

/** A coin's visit beneath the drawing: its moments, its speed, and what came of it. */
export function filming(playing: Playing, title: string): TemplateResult {
  const { film } = playing;
  if (!film) return html``;
  const now = playing.time;
  return html`<div class="filming" role="group" aria-label="The coin's visit">
    <p class="outcome ${film.passes ? "pass" : "fail"}" role="status">
      <span class="mark" aria-hidden="true">${film.passes ? "✓" : "✗"}</span>
      ${title}: ${film.words}.
    </p>
    ${film.across ? html`<img class="across" src=${film.across} alt=${`Seen across: ${film.words}`} />` : ""}
    ${film.times.length > 1
      ? html`<div class="film-row">
            <button type="button" class="play" @click=${() => (playing.running ? playing.pause() : playing.play())}>
              ${playing.running ? "Stop" : "Play"}
            </button>
            <input
              type="range"
              min="0"
              max=${playing.length}
              step="0.001"
              .value=${String(now)}
              aria-label="Moment"
              aria-valuetext=${`${now.toFixed(2)} seconds`}
              @input=${(e: Event) => playing.goTo(Number((e.target as HTMLInputElement).value))}
            />
            <span class="clock">${now.toFixed(2)} s</span>
            <label
              >speed
              <select
                @change=${(e: Event) => {
                  playing.slowness = Number((e.target as HTMLSelectElement).value) as Slowness;
                }}
              >
                ${SPEEDS.map(
                  ([slowness, words]) =>
                    html`<option value=${slowness} .selected=${slowness === playing.slowness}>${words}</option>`,
                )}
              </select></label
            >
          </div>
          <ol class="stages">
            ${film.stages.map(
              ({ stage, at }) => html`<li class=${at <= now ? "reached" : ""}>
                <button type="button" class="plain" @click=${() => playing.goTo(at)}>${STAGES[stage]}</button>
                <span class="clock">${at.toFixed(2)} s</span>
              </li>`,
            )}
            ${film.missed ? html`<li class="missed">✗ not reached: ${STAGES[film.missed]}</li>` : ""}
          </ol>`
      : ""}
    <button type="button" class="away" @click=${() => playing.takeAway()}>Back to the lever</button>
  </div>`;
}
