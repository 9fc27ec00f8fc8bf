import { type Inches } from '../base/quantity.ts';
import { type SpanEnd } from './types.ts';

/** What one end of a span is, and where its post, its rails and its skin stop, along the face. */
export interface Stop {
  readonly end: SpanEnd;
  readonly post: Inches;
  readonly rail: Inches;
  readonly skin: Inches;
}

/** A stop where post, rails and skin all end at one place. */
export const evenStop = (end: SpanEnd, at: Inches): Stop => ({ end, post: at, rail: at, skin: at });
