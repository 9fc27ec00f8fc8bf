import { inches, MM_PER_INCH, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Section } from '../../steel/index.ts';
import { DEFAULTS } from '../defaults.ts';
import { HOLDING_AREA, type HoldingPenBrief, type ReturnAlleyBrief } from '../holding-brief.ts';
import { pathText } from '../path-fault.ts';
import { RANGES } from '../ranges.ts';
import { type ProjectFile } from '../schema/project.ts';

/** A length up to the next whole inch, or 10 mm, so that what is set out is no less than what was asked for. */
function roundedUp(length: number, units: 'in' | 'mm'): Inches {
  const step = units === 'in' ? 1 : 10 / MM_PER_INCH;
  return inches(Math.ceil((length - SAME_LENGTH) / step) * step);
}

/** What a square pen is longer than its gate at least, and as wide: room for the gate's posts, and to turn in (common practice, no source). */
const BESIDE_GATE = 48;
const LEAST_WIDTH = 96;

type PenFile = NonNullable<ProjectFile['holdingPens']>[number];

function sizes(pen: PenFile, area: number, gate: Inches, up: (value: number) => Inches): Pick<HoldingPenBrief, 'length' | 'width'> {
  const { least } = RANGES.holdingPen;
  if (pen.length !== undefined) return { length: pen.length, width: pen.width ?? up(Math.max(least, area / pen.length)) };
  if (pen.width !== undefined) return { length: up(Math.max(least, area / pen.width)), width: pen.width };
  const length = up(Math.max(Math.sqrt(area), gate + BESIDE_GATE));
  return { length, width: up(Math.max(LEAST_WIDTH, area / length)) };
}

/**
 * The holding pens in the order of the walk. A pen of which the file says neither length nor width is square, or longer where its gate
 * asks for that; of which it says one, the other follows from its head at the area that each needs.
 */
export function resolveHoldingPens(file: ProjectFile, posts: ReadonlyMap<string, Section>): readonly HoldingPenBrief[] {
  const units = file.units ?? 'in';
  const each = HOLDING_AREA[file.cattle?.kind ?? DEFAULTS.cattle.kind] * 144;
  const { swings, hangs } = DEFAULTS.opening;
  return (file.holdingPens ?? []).map((pen, index) => {
    const path = pathText(['holdingPens', index]);
    const area = pen.head * each;
    const gate = pen.gate ?? inches(DEFAULTS.holdingGate);
    const { length, width } = sizes(pen, area, gate, (value) => roundedUp(value, units));
    return {
      name: `hold-${String(index + 1)}`, head: pen.head, length, width, gate,
      swings: pen.swings ?? swings['pen-gate'], hangs: pen.hangs ?? hangs,
      hingePost: posts.get(`${path}.hingePost`) ?? null, path,
    };
  });
}

/** The way back to the alley; null where the file has none. */
export function resolveReturn({ returnAlley }: ProjectFile): ReturnAlleyBrief | null {
  if (returnAlley === undefined) return null;
  const { from, width, runs } = returnAlley;
  return { from, width: width ?? inches(DEFAULTS.returnWidth), runs };
}
