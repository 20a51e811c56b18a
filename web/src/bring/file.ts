import { Refused } from "../core/api.js";
import type { Refusal } from "../core/api-types.js";

/** Sends a file as it is and fetches what is made of it. */
export async function send<T>(path: string, file: File, scale: number): Promise<T> {
  const address = `${path}?file=${encodeURIComponent(file.name)}&scale=${scale}`;
  let response: Response;
  try {
    response = await fetch(address, { method: "POST", body: file });
  } catch {
    throw new Refused(0, "Jackwork does not answer.\nIs it still running? Start it again with: jackwork open");
  }
  if (response.ok) return (await response.json()) as T;
  const refusal = (await response.json().catch(() => ({ problem: `The answer was ${response.status}.`, remedy: "" }))) as Refusal;
  throw new Refused(response.status, `${refusal.problem}\n${refusal.remedy}`);
}
