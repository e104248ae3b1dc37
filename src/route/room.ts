// How far what precipitates is from staying dissolved, asked once for each judgement: it costs the engine some twenty answers.
import type { Feasibility } from "../preparation";
import { type Room, roomOf } from "../preparation/internal";

/** Share of the theory below which a step is no preparation. */
export const LEAST = 0.7;

const rooms = new WeakMap<Feasibility, { readonly room: Room | undefined }>();

/** How far what precipitates is from staying dissolved. */
export function roomIn(feasibility: Feasibility): Room | undefined {
  const known = rooms.get(feasibility) ?? { room: roomOf(feasibility, LEAST) };
  rooms.set(feasibility, known);
  return known.room;
}
