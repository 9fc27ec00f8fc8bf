import { type Json } from '../../../../core/brief/json/types.ts';
import { present } from '../../../project/history.ts';
import { withValue } from '../../../project/json-path.ts';
import { type Change, type SessionStore } from '../../../project/session.ts';
import { alleyAsSet } from './alley-as-set.ts';

/** A field's next figure; an alley that was left to its default is said whole. */
export function setFigure(session: SessionStore, path: string, value: Json, change: Change): void {
  const open = session.get();
  if (open === null) return;
  const project = present(open.history);
  session.change(withValue(path.startsWith('alley.runs') ? alleyAsSet(project) : project, path, value), change);
}
