import { type Judged } from './judged.ts';
import { type Looked } from './resolve/brief.ts';
import { builtDrafts, draftFences, eachDraft } from './resolve/fence-drafts.ts';
import { readSectionTable } from './resolve/section-table.ts';
import { lookUpHingePosts } from './resolve/hinge-posts.ts';
import { createSteelLookup } from './resolve/steel.ts';
import { holdFence } from './rules/fence-rules.ts';
import { holdControl, holdMarks, holdSheets, holdWelds } from './rules/list-rules.ts';
import { holdHours, holdSubjects } from './rules/subject-rules.ts';

/** Holds the fields of a project against one another and looks up its steel; what is wrong is reported to `judged`. */
export function judge(judged: Judged): Looked {
  const steel = createSteelLookup(judged);
  const fences = draftFences(judged, steel);
  const pivotName = judged.file.crowdPen?.pivotPost;
  const pivotPost = pivotName === undefined ? null : steel.section(['crowdPen', 'pivotPost'], pivotName);
  const tables = {
    stock: readSectionTable(judged, steel, 'stock', judged.file.shop?.stock),
    roll: readSectionTable(judged, steel, 'roll', judged.file.shop?.roll),
    rack: readSectionTable(judged, steel, 'rack', judged.file.shop?.rack),
  };
  for (const draft of eachDraft(fences)) holdFence(judged, draft);
  holdSheets(judged, builtDrafts(fences, judged.file));
  holdHours(judged);
  holdSubjects(judged);
  holdControl(judged);
  holdWelds(judged);
  holdMarks(judged);
  return { fences, tables, pivotPost, hingePosts: lookUpHingePosts(judged, steel) };
}
