import { type Brief } from '../../brief/types.ts';

/** The class of cattle by which some rules go: as the brief says its kind. */
export type CattleClass = Brief['cattle']['kind'];

export const cattleClass = (brief: Brief): CattleClass => brief.cattle.kind;

/** Over this weight, pounds, cattle of a large breed take the extra width of `chute-width-large`. */
export const LARGE_OVER = 1200;

export const isLarge = (brief: Brief): boolean => brief.cattle.weight > LARGE_OVER;
