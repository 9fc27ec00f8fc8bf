/** Ramps and docks: one outcome for each ramp that a rule speaks of, in walking order. */
import { toDegrees } from '../../base/quantity.ts';
import { type Ramp } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Context } from '../context.ts';
import { deckGuards } from './catwalks.ts';
import { judged, none, unset, type Judge, type Outcome } from '../outcome.ts';
import { least, limitText, meets, most, near, range, type Limit } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printed, printedAngle, printedSmall } from '../words/print.ts';

type Figures = Exclude<Limit, { is: 'words' }>;

/** The outcomes of every ramp of a kind; none in this project where there are none. */
const each = (outcomesOf: (context: Context, ramp: Ramp) => readonly Outcome[], kind?: Ramp['brief']['kind']): Judge => (context) => {
  const found = context.layout.ramps.filter((ramp) => kind === undefined || ramp.brief.kind === kind).flatMap((ramp) => outcomesOf(context, ramp));
  return found.length > 0 ? found : none();
};

/** One measure with a limit of its own. */
const measure = (limit: Figures, value: number, where: string, ramp: Ramp): Outcome =>
  ({ ...judged(meets(limit, value), value, where, ramp.at), limit: limitText(limit) });

export const loadRampWidth = each(({ brief }, ramp) =>
  [judged(meets(rules['load-ramp-width'].limit, ramp.brief.width), ramp.brief.width, say('where.rampWidth', { ramp: ramp.name, width: printed(brief, ramp.brief.width) }), ramp.at)], 'load');

export const unloadWidth = each(({ brief }, ramp) =>
  [judged(meets(rules['unload-width'].limit, ramp.brief.width), ramp.brief.width, say('where.rampWidth', { ramp: ramp.name, width: printed(brief, ramp.brief.width) }), ramp.at)], 'unload');

/** A stepped ramp's slope is that of its nosings. */
export const rampSlope = each((_, ramp) => {
  const slope = toDegrees(ramp.figures.slope);
  const where = say(ramp.figures.surface.kind === 'stepped' ? 'where.rampNosings' : 'where.rampSlope', { ramp: ramp.name, slope: printedAngle(ramp.figures.slope) });
  return [judged(meets(rules['load-ramp-slope'].limit, slope), slope, where, ramp.at)];
});

/** Every ramp has steps or cleats, but one too short for a whole cleat has none. */
export const rampCleatNeeded = each((_, ramp) => {
  const { surface, slope } = ramp.figures;
  const measured = toDegrees(slope);
  const count = surface.kind === 'stepped' ? surface.risers : surface.cleats.length;
  const key = surface.kind === 'stepped' ? 'where.rampSteps' : count > 0 ? 'where.rampCleats' : 'where.rampBare';
  const met = count > 0 || meets(most(rules['ramp-cleat-needed'].limit.values.most), measured);
  return [judged(met, measured, say(key, { ramp: ramp.name, slope: printedAngle(slope), count }), ramp.at)];
});

export const rampStep = each(({ brief }, ramp) => {
  const { surface } = ramp.figures;
  if (surface.kind !== 'stepped') return [];
  const { most: highest, low, high } = rules['ramp-step'].limit.values;
  return [
    measure(most(highest), surface.riser, say('where.rampRiser', { ramp: ramp.name, count: surface.risers, riser: printedSmall(brief, surface.riser) }), ramp),
    measure(range(low, high), surface.tread, say('where.rampTread', { ramp: ramp.name, tread: printedSmall(brief, surface.tread) }), ramp),
  ];
});

export const rampCleat = each(({ brief }, ramp) => {
  const { surface } = ramp.figures;
  if (surface.kind !== 'cleated' || surface.cleats.length === 0) return [];
  const { by, gap, section } = rules['ramp-cleat'].limit.values;
  return [
    measure(near(by, gap), surface.gap, say('where.rampGap', { ramp: ramp.name, gap: printedSmall(brief, surface.gap) }), ramp),
    measure(near(by, section), surface.cleat, say('where.rampCleat', { ramp: ramp.name, cleat: printedSmall(brief, surface.cleat) }), ramp),
  ];
});

export const dockHeight = each(({ brief }, ramp) => {
  const { by, low, high } = rules['dock-height'].limit.values;
  const height = ramp.brief.dockHeight;
  const met = meets(near(by, low), height) || meets(near(by, high), height);
  return [judged(met, height, say('where.dockHeight', { ramp: ramp.name, height: printed(brief, height) }), ramp.at)];
});

/** An auction's dock is the longer one; where the brief does not say what the place is, a dock between the two is left to a person. */
export const unloadDock = each(({ brief }, ramp) => {
  const { ranch, auction } = rules['unload-dock'].limit.values;
  const length = ramp.brief.dockLength;
  const where = say('where.dockLength', { ramp: ramp.name, length: printed(brief, length) });
  if (brief.site.volume !== null) return [measure(least(brief.site.volume === 'auction' ? auction : ranch), length, where, ramp)];
  if (meets(least(ranch), length) && !meets(least(auction), length)) {
    return unset(['site.volume']).map((outcome) => ({ ...outcome, measured: length, at: ramp.at }));
  }
  return [judged(meets(least(ranch), length), length, where, ramp.at)];
}, 'unload');

/** How far under a guard's height a fence may stay and still be one (`rail-height`). */
const { of: guardHeight, by: guardSlack } = rules['rail-height'].limit.values;

/**
 * Docks as high as a guarded edge begins, then catwalks: a dock's sides are guarded by its fences; its truck end is open, which a
 * person has to look at.
 */
export const catwalkGuard: Judge = (context) => {
  const { brief, layout } = context;
  const docks = layout.ramps.flatMap((ramp): readonly Outcome[] => {
    const height = ramp.brief.dockHeight;
    const named = { ramp: ramp.name, height: printed(brief, height) };
    if (!meets(rules['catwalk-guard'].limit, height)) return [judged(true, height, say('where.dockLow', named), ramp.at)];
    const lowest = Math.min(...layout.fences.filter((fence) => fence.run === ramp.name).map((fence) => fence.brief.height));
    const sides = say('where.dockSides', { ...named, guard: printed(brief, lowest), least: printed(brief, guardHeight - guardSlack) });
    return [
      judged(meets(least(guardHeight - guardSlack), lowest), height, sides, ramp.at),
      { verdict: 'look', measured: height, where: say('where.dockEnd', named), at: ramp.at },
    ];
  });
  if (layout.catwalks.length === 0) return docks.length > 0 ? docks : none();
  return [...docks, ...deckGuards(context)];
};
