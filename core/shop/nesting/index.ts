/** Nesting: flat parts laid on stock sheets, or on a strip. */
export { nestParts } from './nest-parts.ts';
export { nestStrip, type StripNest } from './strip.ts';
export { moldsOf, type Mold } from './mold.ts';
export { partSpacing } from './practice.ts';
export type { Nest, NestedPart, NestedSheet, NestPart, SheetSize } from './types.ts';
export { laidPlates, sheetsOf, shopPlates, type LaidPlate, type NamedSheet, type PlateNest, type ShopPlates } from './shop-plates.ts';
