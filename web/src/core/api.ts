export type * from "./api-types.js";
import type { Refusal } from "./api-types.js";

/** Why Jackwork did not do what was asked; the message is for people. */
export class Refused extends Error {
  constructor(
    readonly status: number,
    message: string,
  ) {
    super(message);
  }
}

/** Fetches one of our own answers; whatever went wrong becomes an Error in plain words. */
export async function get<T>(path: string, signal?: AbortSignal): Promise<T> {
  return ask<T>(path, signal ? { signal } : {});
}

/** Sends one of our own records and fetches the answer. */
export async function post<T>(path: string, body: unknown, signal?: AbortSignal): Promise<T> {
  const request: RequestInit = {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  };
  if (signal) request.signal = signal;
  return ask<T>(path, request);
}

/** The address of something of a design. */
export function designPath(id: string, what = "designs"): string {
  return `/api/${what}/${id.split("/").map(encodeURIComponent).join("/")}`;
}

async function ask<T>(path: string, request: RequestInit): Promise<T> {
  let response: Response;
  try {
    response = await fetch(path, request);
  } catch (e) {
    if (e instanceof DOMException && e.name === "AbortError") throw e;
    throw new Refused(0, "Jackwork does not answer.\nIs it still running? Start it again with: jackwork open");
  }
  if (response.ok) return (await response.json()) as T;
  let refusal: Refusal;
  try {
    refusal = (await response.json()) as Refusal;
  } catch {
    throw new Refused(
      response.status,
      `The answer was ${response.status}, without a reason.\nLook where Jackwork was started.`,
    );
  }
  throw new Refused(
    response.status,
    refusal.remedy ? `${refusal.problem}\n${refusal.remedy}` : refusal.problem,
  );
}
