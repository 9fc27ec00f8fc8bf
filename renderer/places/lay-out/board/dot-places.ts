import { add, distance, type Vec } from '../../../../core/base/points.ts';

/** How far a number stands from its place, pixels: nearer first. */
const REACH = [34, 60, 88];
/** Clear of the next number, and of a ring that a hand takes hold of. */
const CLEAR = 32;
/** Up and to the right first, as a note is written beside its place; then round. */
const WAYS = [45, 135, 0, 180, 90, -45, -135, -90].map((degrees) => (degrees * Math.PI) / 180);

/**
 * Where the numbers of findings stand: beside their places, clear of each other and of what is `taken`. Where there is no room, as near as
 * can be. `before`: how far off its place each stood a moment ago, where it stays if it can, so that nothing dances while a hand moves.
 */
export function dotPlaces(places: readonly Vec[], taken: readonly Vec[], before: readonly (Vec | undefined)[] = []): readonly Vec[] {
  const held = [...taken];
  return places.map((place, index) => {
    const stood = before[index];
    const round = REACH.flatMap((reach) => WAYS.map((way) => ({ x: place.x + reach * Math.cos(way), y: place.y - reach * Math.sin(way) })));
    const around = stood === undefined ? round : [add(place, stood), ...round];
    const found = around.find((at) => held.every((other) => distance(at, other) >= CLEAR)) ?? around[0] ?? place;
    held.push(found);
    return found;
  });
}
