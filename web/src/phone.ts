/** The bench on a phone: big buttons for one thumb. No framework: it must come up at once beside the laser. */
import type { Choices, Design, Logged } from "./phone/model";
import { button, chosen, element } from "./phone/parts";
import { stageWords } from "./core/stages";
import { now, Queue, uuid } from "./core/unsent";

const KEPT = "jackwork-bench-choices";
const RETRY = 5_000;
const RENEW = 15_000;
const main = document.getElementById("bench") as HTMLElement;
const said = document.getElementById("said") as HTMLElement;

let choices: Choices;
let design: Design;
let coin = "";
let piece = "";
let last: { entry: Logged; passed: boolean } | undefined;
let view: "try" | "cause" | "time" = "try";
let started = 0;
let trouble = "";

/** Of this workshop alone: another's page may have the same address. */
let queue: Queue<Logged>;

function say(words: string, mood = ""): void {
  said.textContent = words;
  said.dataset["mood"] = mood;
}

async function send(): Promise<void> {
  const sent = await queue.send();
  const waiting = queue.length;
  const many = waiting === 1 ? "1 entry waits" : `${waiting} entries wait`;
  main.dataset["waiting"] = String(waiting);
  if (sent === "locked out") {
    say(`This phone is not let in any more${waiting > 0 ? `; ${many} here` : ""}. Ask for a new link at the bench.`, "bad");
  } else if (waiting > 0) {
    say(`No connection: ${many} here and will be sent.`, "wait");
  } else if (trouble !== "") {
    say(trouble, "bad");
    trouble = "";
  } else {
    say("All of it is in the log.");
  }
}

function log(entry: Logged): void {
  queue.add(entry);
  // At once, not only when it was tried: nobody may take it for sent meanwhile.
  main.dataset["waiting"] = String(queue.length);
  void send();
}

function entry(kind: Logged["kind"], fields: Record<string, string | number>): Logged {
  return { ...fields, id: uuid(), kind, at: now() };
}

function tried(cause: string): void {
  const made = entry("trial", { design: design.design, revision: design.revision, coin, piece, cause });
  const passed = cause === "";
  design.tries += 1;
  design.passes += passed ? 1 : 0;
  last = { entry: made, passed };
  view = "try";
  log(made);
  draw();
}

function takeBack(): void {
  if (!last) {
    return;
  }
  const of = choices.designs.find((each) => each.design === last?.entry["design"]);
  if (of) {
    of.tries -= 1;
    of.passes -= last.passed ? 1 : 0;
  }
  if (queue.remove(last.entry.id)) {
    void send();
  } else {
    log(entry("strike-trial", { strikes: last.entry.id }));
  }
  last = undefined;
  draw();
}

function choose(next: Design): void {
  design = next;
  coin = next.coins.includes(coin) ? coin : (next.coins[0] ?? "");
  piece = next.pieces.includes(piece) ? piece : "";
}

function heads(): HTMLElement[] {
  const made: HTMLElement[] = [];
  if (choices.designs.length > 1) {
    const options = choices.designs.map((each): [string, string] => [each.design, titled(each)]);
    made.push(
      chosen("Design", options, design.design, (value) => {
        choose(choices.designs.find((each) => each.design === value) ?? design);
        draw();
      }),
    );
  }
  if (choices.designs.length === 1) {
    made.push(element("h1", titled(design)));
  }
  if (design.pieces.length > 0) {
    const options = design.pieces.map((serial): [string, string] => [serial, serial]);
    made.push(chosen("Piece", [["", "none in particular"], ...options], piece, (value) => {
        piece = value;
        draw();
      }));
  }
  const row = element("div", "", made.length > 1 ? "heads pair" : "heads");
  row.append(...made);
  return [row];
}

const titled = (of: Design): string =>
  `${choices.designs.some((other) => other !== of && other.title === of.title) ? `${of.title} (${of.design})` : of.title}, revision ${of.revision}`;

function tries(): HTMLElement[] {
  const coins = element("div", "", "coins");
  for (const each of design.coins) {
    const pick = button(each, "", () => {
      coin = each;
      draw();
    });
    pick.setAttribute("aria-pressed", String(each === coin));
    coins.append(pick);
  }
  const thumb = element("div", "", "thumb");
  const low = element("div", "", "pair");
  const back = button("Take back the last", "quiet", takeBack);
  back.disabled = last === undefined;
  low.append(back, button("Time a job", "quiet", () => show("time")));
  thumb.append(
    low,
    button("Failed", "failed", () => show("cause")),
    button("It worked", "worked", () => tried("")),
  );
  if (coin === "") {
    thumb.querySelectorAll<HTMLButtonElement>(".failed, .worked").forEach((each) => (each.disabled = true));
  }
  return [...heads(), element("p", `${design.passes} of ${design.tries} passed so far`, "count"), coins, thumb];
}

function causes(): HTMLElement[] {
  const list = element("div", "", "causes");
  for (const { cause, words } of choices.causes) {
    list.append(button(words, "", () => tried(cause)));
  }
  const thumb = element("div", "", "thumb");
  thumb.append(button("Back: it did not fail", "quiet", () => show("try")));
  return [element("h1", `What went wrong first, with ${coin}?`), list, thumb];
}

function times(): HTMLElement[] {
  const thumb = element("div", "", "thumb");
  const clock = element("p", elapsed(), "clock");
  if (started === 0) {
    thumb.append(button("Start", "worked", () => { started = Date.now(); draw(); }));
  } else {
    const list = element("div", "", "causes");
    for (const operation of choices.operations) {
      list.append(
        button(`Done: ${stageWords(operation)}`, "", () => {
          const minutes = Math.max(0.1, Math.round((Date.now() - started) / 6000) / 10);
          started = 0;
          view = "try";
          log(entry("timing", { design: design.design, revision: design.revision, operation, minutes, pieces: 1 }));
          draw();
        }),
      );
    }
    thumb.append(list);
  }
  thumb.append(button("Back", "quiet", () => show("try")));
  return [element("h1", titled(design)), clock, thumb];
}

function elapsed(): string {
  const seconds = started === 0 ? 0 : Math.floor((Date.now() - started) / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}

function show(next: typeof view): void {
  view = next;
  draw();
}

function draw(): void {
  const made = view === "try" ? tries() : view === "cause" ? causes() : times();
  main.replaceChildren(said, ...made);
  main.dataset["state"] = view;
}

/** The link's token lies behind its #, so that no log nor preview ever sees it. */
async function enter(): Promise<boolean> {
  const token = location.hash.slice(1);
  if (token === "") {
    return true;
  }
  history.replaceState(null, "", "/");
  const answer = await fetch("/session", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ token }),
  });
  return answer.ok;
}

/** What was frozen, made and tried meanwhile; not while a choice is open, nor while anything waits here. */
async function renew(): Promise<void> {
  if (document.hidden || view !== "try" || queue.length > 0 || document.activeElement instanceof HTMLSelectElement) {
    return;
  }
  try {
    const answer = await fetch("/choices");
    const text = answer.ok ? await answer.text() : "";
    if (text === "" || text === localStorage.getItem(KEPT) || queue.length > 0 || view !== "try") {
      return;
    }
    localStorage.setItem(KEPT, text);
    choices = JSON.parse(text) as Choices;
    const same = choices.designs.find((each) => each.design === design.design) ?? choices.designs[0];
    if (same) {
      choose(same);
      draw();
    }
  } catch {
    // Sending says whether there is a connection.
  }
}

async function start(): Promise<void> {
  let entered = true;
  try {
    entered = await enter();
    const answer = await fetch("/choices");
    if (answer.ok) {
      const text = await answer.text();
      localStorage.setItem(KEPT, text);
      choices = JSON.parse(text) as Choices;
    } else {
      main.dataset["state"] = "locked";
      say(
        entered
          ? "This phone is not let in. Ask for a link at the bench."
          : "This link has been used, or is too old. Ask for another at the bench.",
        "bad",
      );
      return;
    }
  } catch {
    const kept = localStorage.getItem(KEPT);
    if (kept === null) {
      say("No connection to the bench. Is it still running?", "bad");
      return;
    }
    choices = JSON.parse(kept) as Choices;
  }
  const first = choices.designs[0];
  if (!first) {
    main.dataset["state"] = "empty";
    say("No design is frozen yet. Freeze one at the bench first: tries belong to a revision.", "wait");
    return;
  }
  queue = new Queue<Logged>(`jackwork-bench-unsent ${choices.workshop}`, "/log", (problem) => (trouble = `Not taken: ${problem}`));
  choose(first);
  draw();
  await send();
  setInterval(() => void renew(), RENEW);
  setInterval(() => queue.length > 0 && void send(), RETRY);
  setInterval(() => {
    const clock = main.querySelector(".clock");
    if (clock) {
      clock.textContent = elapsed();
    }
  }, 1000);
  addEventListener("online", () => void send());
  document.addEventListener("visibilitychange", () => document.hidden || void send().then(renew));
}

void start();
