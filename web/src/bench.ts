import type { Room } from "./rooms.js";

/** Not built yet: null keeps it away from the top of the page. */
export const bench: Room | null = null;
