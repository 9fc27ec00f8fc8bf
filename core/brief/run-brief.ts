/** A run of an alley or a chute as the brief asks for it. */
import { type Inches, type Radians } from '../base/quantity.ts';
import { type Side } from './side.ts';

export type RunBrief =
  | { readonly kind: 'straight'; readonly length: Inches }
  | { readonly kind: 'arc'; readonly insideRadius: Inches; readonly angle: Radians; readonly hand: Side };
