/** Branded figures: a length, an angle and a weight do not mix by accident. All of them are plain numbers at run time. */

declare const unit: unique symbol;

/** A length in inches (an IEEE double; 1/16 in is exact). */
export type Inches = number & { readonly [unit]: 'in' };
/** An angle in radians, counter-clockwise positive where it has a direction. */
export type Radians = number & { readonly [unit]: 'rad' };
/** A weight in pounds. */
export type Pounds = number & { readonly [unit]: 'lb' };

/** Names a number a length in inches. */
export const inches = (value: number): Inches => value as Inches;
/** Names a number an angle in radians. */
export const radians = (value: number): Radians => value as Radians;
/** Names a number a weight in pounds. */
export const pounds = (value: number): Pounds => value as Pounds;

/** Degrees to radians. */
export const degrees = (value: number): Radians => ((value * Math.PI) / 180) as Radians;
/** Radians to degrees. */
export const toDegrees = (value: Radians): number => (value * 180) / Math.PI;

/** Millimeters in an inch, exact by definition. */
export const MM_PER_INCH = 25.4;
