/**
 * Which function answers each rule. A rule without one does not compile; adding one is a row of the table and a line here.
 *
 * | how it is answered | rules |
 * | --- | --- |
 * | measured | swing-foul, hinge-load (sag, stress), first-backstop, backstop-count, man-pass, foul-opening, crowd-sweep, crowd-radius, junction-tangent, funnel-angle, lead-length, see-ahead, single-turn, chute-length, chute-inside-radius, fence-height, post-depth, ground-fall, post-line-offset, tie-angle, control-clear, foul-fence, foul-path, foul-post |
 * | measured for each ramp that there is | load-ramp-width, load-ramp-slope, ramp-cleat-needed, ramp-step, ramp-cleat, dock-height, unload-dock, unload-width |
 * | yes or no for each loading ramp | solid-ramp |
 * | measured for docks and catwalks | catwalk-guard |
 * | measured for each catwalk | rail-height, midrail, toe-board, rail-load, catwalk-skin, catwalk-width, stair-rise, rail-other-jurisdiction |
 * | measured for the class of cattle in the brief; the others have no subject | chute-width-600, -yearling, -mature, -large |
 * | measured as the area a head when the pen holds as many as it may, which it says | crowd-area |
 * | measured for each holding pen | holding-area |
 * | counted in the crowd pen and in the chute | man-gate, lone-animal |
 * | standing places that cattle see, counted | squeeze-hidden, crew-hidden |
 * | yes or no, nothing to measure | first-backstop-held, quiet, solid-crowd, solid-outer, tenure |
 * | only reports: Look, with the figures | crowd-gate-rest, rail-gap, roof-daylight |
 * | yes or no for the roof of the squeeze pad | roof-see-through |
 * | a note for a person: Look | night-light |
 * | against what the brief gives; says what was not given | roll-limit, footing-load, sun-glare |
 * | unmet where there is no return alley, or where it does not come to a gate of the alley | return-way |
 * | whether decks go along the pen's outer fence | crowd-catwalk |
 * | counted past the squeeze where there is a pad or a sort pen | sort-gate |
 */
import { chuteInsideRadius, chuteLength, leadLength, singleTurn } from './judges/chute-path.ts';
import { chuteWidth, chuteWidthLarge } from './judges/chute-width.ts';
import { catwalkSkin, catwalkWidth, crowdCatwalk, midrail, railHeight, railLoads, railOtherJurisdiction, stairRise, toeBoards } from './judges/catwalks.ts';
import { crowdArea, crowdRadius, crowdSweep, funnelAngle, groundFall } from './judges/crowd-pen.ts';
import { backstopCount, firstBackstop, firstBackstopHeld } from './judges/backstops.ts';
import { fenceHeight } from './judges/fence-height.ts';
import { holdingArea } from './judges/holding-area.ts';
import { footingLoad } from './judges/footing-load.ts';
import { fouls, openingFouls } from './judges/fouls.ts';
import { crewHidden, squeezeHidden } from './judges/hidden.ts';
import { junctionTangent } from './judges/junction-tangent.ts';
import { crowdGateRest, hingeLoads, quiet } from './judges/gates.ts';
import { loneAnimal, manGate, manPass } from './judges/man-gates.ts';
import { postDepth } from './judges/post-depth.ts';
import { postLineOffset } from './judges/post-line-offset.ts';
import { railGap } from './judges/rail-gap.ts';
import { catwalkGuard, dockHeight, loadRampWidth, rampCleat, rampCleatNeeded, rampSlope, rampStep, unloadDock, unloadWidth } from './judges/ramps.ts';
import { roofDaylight, roofSeeThrough } from './judges/roof.ts';
import { rollLimit } from './judges/roll-limit.ts';
import { seesAhead } from './judges/see-ahead.ts';
import { nightLight, tenure } from './judges/site.ts';
import { solidCrowd, solidOuter, solidRamp } from './judges/solid-sides.ts';
import { returnWay } from './judges/return-way.ts';
import { sortGate } from './judges/sorting.ts';
import { sunGlare } from './judges/sun-glare.ts';
import { swingFoul } from './judges/swing-foul.ts';
import { controlClear, tieAngle } from './judges/stakeout.ts';
import { type Judge } from './outcome.ts';
import { type RuleId } from './rules/table.ts';

export const judges: Readonly<Record<RuleId, Judge>> = {
  'crowd-sweep': crowdSweep,
  'crowd-radius': crowdRadius,
  'junction-tangent': junctionTangent,
  'funnel-angle': funnelAngle,
  'crowd-gate-rest': crowdGateRest,
  'lead-length': leadLength,
  'see-ahead': seesAhead,
  'squeeze-hidden': squeezeHidden,
  'crew-hidden': crewHidden,
  'single-turn': singleTurn,
  'first-backstop': firstBackstop,
  'first-backstop-held': firstBackstopHeld,
  'backstop-count': backstopCount,
  quiet,
  'chute-width-600': chuteWidth('calf'),
  'chute-width-yearling': chuteWidth('yearling'),
  'chute-width-mature': chuteWidth('mature'),
  'chute-width-large': chuteWidthLarge,
  'chute-length': chuteLength,
  'chute-inside-radius': chuteInsideRadius,
  'holding-area': holdingArea,
  'crowd-area': crowdArea,
  'fence-height': fenceHeight,
  'post-depth': postDepth,
  'solid-crowd': solidCrowd,
  'solid-outer': solidOuter,
  'solid-ramp': solidRamp,
  'rail-gap': railGap,
  'rail-height': railHeight,
  'rail-other-jurisdiction': railOtherJurisdiction,
  'crowd-catwalk': crowdCatwalk,
  'catwalk-guard': catwalkGuard,
  midrail,
  'toe-board': toeBoards,
  'rail-load': railLoads,
  'catwalk-skin': catwalkSkin,
  'catwalk-width': catwalkWidth,
  'man-gate': manGate,
  'man-pass': manPass,
  'lone-animal': loneAnimal,
  'stair-rise': stairRise,
  'sort-gate': sortGate,
  'return-way': returnWay,
  'swing-foul': swingFoul,
  'load-ramp-width': loadRampWidth,
  'load-ramp-slope': rampSlope,
  'ramp-cleat-needed': rampCleatNeeded,
  'ramp-step': rampStep,
  'ramp-cleat': rampCleat,
  'dock-height': dockHeight,
  'unload-dock': unloadDock,
  'unload-width': unloadWidth,
  'sun-glare': sunGlare,
  'roof-see-through': roofSeeThrough,
  'roof-daylight': roofDaylight,
  'night-light': nightLight,
  tenure,
  'ground-fall': groundFall,
  'foul-fence': fouls('foul-fence'),
  'foul-path': fouls('foul-path'),
  'foul-opening': openingFouls,
  'foul-post': fouls('foul-post'),
  'post-line-offset': postLineOffset,
  'roll-limit': rollLimit,
  'tie-angle': tieAngle,
  'control-clear': controlClear,
  'hinge-load': hingeLoads,
  'footing-load': footingLoad,
};
