import { describe, expect, it } from 'vitest';
import { printFigure, stepped, typedFigure, wholeStep, writtenFigure } from '../../../renderer/places/lay-out/figures.ts';

const radius = { figure: 'length', least: 72, greatest: 240 } as const;
const sweep = { figure: 'angle', least: Math.PI / 2, greatest: (240 * Math.PI) / 180 } as const;
const degree = Math.PI / 180;

describe('figures of the board', () => {
  it('step by an inch, 10 mm or a degree', () => {
    expect(wholeStep('length', 'in')).toBe(1);
    expect(wholeStep('length', 'mm') * 25.4).toBeCloseTo(10, 12);
    expect(wholeStep('angle', 'mm')).toBeCloseTo(degree, 15);
  });

  it('go from between two steps to the next one that way', () => {
    expect(stepped(radius, 143.4, 1, 'in')).toBe(144);
    expect(stepped(radius, 143.4, -1, 'in')).toBe(143);
    expect(stepped(radius, 144, 1, 'in')).toBe(145);
    expect(stepped(radius, 143.4, 10, 'in')).toBe(153);
    expect(stepped(radius, 3505 / 25.4, -1, 'mm') * 25.4).toBeCloseTo(3500, 9);
    expect(stepped(sweep, 164 * degree, 1, 'in')).toBeCloseTo(165 * degree, 12);
  });

  it('stop at the ends of what a field may be', () => {
    expect(stepped(radius, 236, 10, 'in')).toBe(240);
    expect(stepped(radius, 72.5, -1, 'in')).toBe(72);
    expect(stepped(sweep, 91 * degree, -10, 'in')).toBe(Math.PI / 2);
  });

  it('are written as the file has them: inches, whole millimeters with their unit, degrees', () => {
    expect(writtenFigure('length', 143.52, 'in')).toBe(143.5);
    expect(writtenFigure('length', 144, 'mm')).toBe('3658 mm');
    expect(writtenFigure('angle', 165 * degree, 'mm')).toBe(165);
    expect(writtenFigure('angle', 164.96 * degree, 'in')).toBe(165);
  });

  it('are typed in any unit; a plain number is in the project\'s own', () => {
    expect(typedFigure('length', '12\'-6 1/2"', 'mm')).toBe(150.5);
    expect(typedFigure('length', '3500 mm', 'in')).toBeCloseTo(137.7953, 4);
    expect(typedFigure('length', '150', 'in')).toBe(150);
    expect(typedFigure('length', '3500', 'mm')).toBeCloseTo(137.7953, 4);
    expect(typedFigure('length', 'a lot', 'in')).toBeNull();
    expect(typedFigure('angle', '165°', 'in')).toBeCloseTo(165 * degree, 12);
    expect(typedFigure('angle', '22.5 deg', 'in')).toBeCloseTo(22.5 * degree, 12);
    expect(typedFigure('angle', '12 ft', 'in')).toBeNull();
  });

  it('come back from what is shown of them', () => {
    expect(typedFigure('length', printFigure('length', 150.5, 'in'), 'in')).toBe(150.5);
    expect(typedFigure('length', printFigure('length', 3500 / 25.4, 'mm'), 'mm')).toBeCloseTo(3500 / 25.4, 9);
    expect(typedFigure('angle', printFigure('angle', 32 * degree, 'in'), 'in')).toBeCloseTo(32 * degree, 12);
  });
});
