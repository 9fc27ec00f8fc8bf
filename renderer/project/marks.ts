/** Piece marks that were issued belong to the project whatever is undone: a mark is never given to another piece. */
import { isJsonObject, type Json, type JsonObject } from '../../core/brief/json/types.ts';
import { keepMarks } from '../../core/package/keep-marks.ts';
import { type History } from './history.ts';
import { hasOwnText, readText, textOf } from './project-text.ts';

export type Marks = Readonly<Record<string, string>>;

/** A project's own marks, or null where what stands there are none. */
function ownMarks(project: JsonObject): Marks | null {
  const marks: Json | undefined = project['marks'];
  if (marks === undefined) return {};
  if (!isJsonObject(marks) || !Object.values(marks).every((mark) => typeof mark === 'string')) return null;
  return marks as Marks;
}

/** The project with the issued marks beside its own, which stand where the two differ. Its text keeps its spaces and its order. */
export function withMarks(project: JsonObject, issued: Marks): JsonObject {
  const own = ownMarks(project);
  if (own === null) return project;
  const used = new Set(Object.values(own));
  const fresh = Object.entries(issued).filter(([signature, mark]) => own[signature] === undefined && !used.has(mark));
  if (fresh.length === 0) return project;
  const marks = { ...own, ...Object.fromEntries(fresh) };
  if (hasOwnText(project)) {
    const read = readText(keepMarks(textOf(project), marks));
    if (read.ok) return read.held;
  }
  return { ...project, marks };
}

/** Every state with the issued marks, so that undo takes none of them back. */
export const withMarksThroughout = (history: History, issued: Marks): History => {
  const done = new Map<JsonObject, JsonObject>();
  const steps = history.steps.map((step) => {
    const project = done.get(step.project) ?? withMarks(step.project, issued);
    done.set(step.project, project);
    return project === step.project ? step : { ...step, project };
  });
  return { ...history, steps };
};
