import { type Brief } from '../../brief/types.ts';
import { rules } from '../rules/table.ts';
import { cattleClass, isLarge } from './cattle-class.ts';

/** The narrowest clear width, inches, that an animal of the brief's class passes: the least that the rules allow its chute. */
export function animalPass(brief: Brief): number {
  const base = {
    calf: rules['chute-width-600'].limit, yearling: rules['chute-width-yearling'].limit, mature: rules['chute-width-mature'].limit,
  }[cattleClass(brief)];
  return base.of - base.by + (isLarge(brief) ? rules['chute-width-large'].limit.values.add : 0);
}
