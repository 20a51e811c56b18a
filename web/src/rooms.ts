import { bench } from "./bench/bench.js";
import type { Room } from "./core/room.js";
import { make } from "./make/make.js";
import { pay } from "./pay/pay.js";
import { work } from "./work/work.js";
import { workshop } from "./workshop/workshop.js";

/** In the order of the questions; what is not built yet is not shown. */
export const rooms: Room[] = [work, make, pay, bench, workshop].filter((room): room is Room => room !== null);
