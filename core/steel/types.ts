import { type Inches } from '../base/quantity.ts';

/** A bar section as a brief names it. Round: across = along = outside diameter. */
export interface Section {
  /** As written in the brief, spaces and case tidied: the key of `shop.stock`. */
  readonly name: string;
  readonly shape: 'round' | 'rectangular';
  /** Outside size measured outward from the face (for a rail) or across the fence (for a post). */
  readonly across: Inches;
  /** Outside size measured upright (for a rail) or along the fence (for a post). */
  readonly along: Inches;
  readonly wall: Inches;
  /** Plain-end weight, lb per inch. */
  readonly weightPerInch: number;
}

/** Sheet or plate. */
export interface Sheet {
  readonly name: string;
  readonly thickness: Inches;
  /** lb per square inch. */
  readonly weightPerArea: number;
  /** What the weight comes from, so that it can be printed: the gauge table's own figure, or the density of steel. */
  readonly weightFrom: 'gauge-table' | 'density';
}
