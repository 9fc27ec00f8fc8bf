/** Every state that a project was in since it was opened, and where in them it stands now. Undo and redo have no limit. */
import { type JsonObject } from '../../core/brief/json/types.ts';

export interface Step {
  readonly project: JsonObject;
  /** What led to it, as a person calls it. */
  readonly label: string;
  /** Changes of one gesture (a drag, a figure being typed) are one step. null: a step of its own. */
  readonly gesture: string | null;
}

export interface History {
  readonly steps: readonly Step[];
  /** Index of the present state. */
  readonly at: number;
}

export const beginHistory = (project: JsonObject): History => ({ steps: [{ project, label: '', gesture: null }], at: 0 });

export function present(history: History): JsonObject {
  const step = history.steps[history.at];
  if (step === undefined) throw new Error(`no step ${String(history.at)}`);
  return step.project;
}

/** The history with a further state; what had been undone is given up. */
export function advance(history: History, step: Step): History {
  const now = history.steps[history.at];
  if (now !== undefined && now.project === step.project) return history;
  const joins = step.gesture !== null && now?.gesture === step.gesture;
  const kept = history.steps.slice(0, history.at + (joins ? 0 : 1));
  return { steps: [...kept, step], at: kept.length };
}

/** Ends a gesture, so that the next change is a step of its own. */
export function settle(history: History): History {
  const now = history.steps[history.at];
  if (now === undefined || now.gesture === null) return history;
  return { ...history, steps: history.steps.with(history.at, { ...now, gesture: null }) };
}

/** Takes a gesture that is still going on back as if it had not begun; what had been undone before it stays given up. */
export function giveUp(history: History, gesture: string): History {
  if (history.steps[history.at]?.gesture !== gesture || !canUndo(history)) return history;
  return { steps: history.steps.slice(0, history.at), at: history.at - 1 };
}

export const canUndo = (history: History): boolean => history.at > 0;
export const canRedo = (history: History): boolean => history.at < history.steps.length - 1;
export const undo = (history: History): History => (canUndo(history) ? settle({ ...history, at: history.at - 1 }) : history);
export const redo = (history: History): History => (canRedo(history) ? settle({ ...history, at: history.at + 1 }) : history);
/** What undo takes back, or redo brings again. */
export const undoLabel = (history: History): string => history.steps[history.at]?.label ?? '';
export const redoLabel = (history: History): string => history.steps[history.at + 1]?.label ?? '';
