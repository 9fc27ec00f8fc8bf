/** How the parts are joined: the rule, each joint's symbol, how many there are, what they take. */
export { filletSize } from './fillet-size.ts';
export { WELD_PRACTICE } from './practice.ts';
export * from './symbols.ts';
export { saddleLength } from './saddle-length.ts';
export { weldColumns, weldLots, weldRows, type WeldRow } from './rows.ts';
export { weldMaterialRows } from './materials.ts';
export type { Weld, WeldJoint, WeldLot } from './types.ts';
