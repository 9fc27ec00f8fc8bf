/** The one table of words. A second language is a second set of these files. */
import { bends } from './en/bends.ts';
import { bill } from './en/bill.ts';
import { board } from './en/board.ts';
import { choiceWords } from './en/brief/choices.ts';
import { helpFences } from './en/brief/help-fences.ts';
import { helpShop } from './en/brief/help-shop.ts';
import { helpWalk } from './en/brief/help-walk.ts';
import { helpYard } from './en/brief/help-yard.ts';
import { fieldLabels } from './en/brief/labels.ts';
import { browserDesk } from './en/browser-desk.ts';
import { capacityWords } from './en/capacity.ts';
import { checklistWords } from './en/checklist.ts';
import { catwalks } from './en/catwalks.ts';
import { command } from './en/command.ts';
import { details } from './en/details.ts';
import { cutList } from './en/cut-list.ts';
import { drawings } from './en/drawings.ts';
import { earlierIssue } from './en/earlier-issue.ts';
import { faults } from './en/faults.ts';
import { flatParts } from './en/flat-parts.ts';
import { findings } from './en/findings.ts';
import { gates } from './en/gates.ts';
import { holdingDrawings } from './en/holding-drawings.ts';
import { layoutFaults } from './en/layout-faults.ts';
import { placeArcCheck } from './en/place-arc-check.ts';
import { placeBrief } from './en/place-brief.ts';
import { placeCheck } from './en/place-check.ts';
import { placeHandOver } from './en/place-hand-over.ts';
import { placeLayOut } from './en/place-lay-out.ts';
import { placeMake } from './en/place-make.ts';
import { placeProjects } from './en/place-projects.ts';
import { placeStakeOut } from './en/place-stake-out.ts';
import { platesWords } from './en/plates.ts';
import { ramps } from './en/ramps.ts';
import { reportWords } from './en/report.ts';
import { scheduleWords } from './en/schedules.ts';
import { setUp } from './en/set-up.ts';
import { shell } from './en/shell.ts';
import { shop } from './en/shop.ts';
import { siteChecks } from './en/site-checks.ts';
import { start } from './en/start.ts';
import { templates } from './en/templates.ts';
import { terms } from './en/terms.ts';
import { welds } from './en/welds.ts';
import { windowWords } from './en/window.ts';
import { yard } from './en/yard.ts';

const table = {
  ...bill,
  ...bends,
  ...board,
  ...browserDesk,
  ...capacityWords,
  ...checklistWords,
  ...catwalks,
  ...choiceWords,
  ...command,
  ...details,
  ...flatParts,
  ...cutList,
  ...drawings,
  ...earlierIssue,
  ...faults,
  ...fieldLabels,
  ...findings,
  ...gates,
  ...helpFences,
  ...helpShop,
  ...helpWalk,
  ...helpYard,
  ...holdingDrawings,
  ...layoutFaults,
  ...placeArcCheck,
  ...placeBrief,
  ...placeCheck,
  ...placeHandOver,
  ...placeLayOut,
  ...placeMake,
  ...placeProjects,
  ...placeStakeOut,
  ...platesWords,
  ...ramps,
  ...reportWords,
  ...scheduleWords,
  ...setUp,
  ...shell,
  ...shop,
  ...siteChecks,
  ...start,
  ...templates,
  ...terms,
  ...welds,
  ...windowWords,
  ...yard,
} as const;

export type StringKey = keyof typeof table;

/** Whether there are words behind a key that was put together. */
export const isStringKey = (key: string): key is StringKey => Object.hasOwn(table, key);

export type Params = Readonly<Record<string, string | number>>;

/**
 * The words behind a key, with `{name}` filled from `params`.
 * Throws where a parameter named in the text is missing: a programmer's mistake.
 */
export function say(key: StringKey, params: Params = {}): string {
  return table[key].replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = params[name];
    if (value === undefined) throw new Error(`${key} needs {${name}}`);
    return String(value);
  });
}
