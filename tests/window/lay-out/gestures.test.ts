import { describe, expect, it } from 'vitest';
import { type JsonObject } from '../../../core/brief/json/types.ts';
import { canRedo, canUndo, present } from '../../../renderer/project/history.ts';
import { createSession } from '../../../renderer/project/session.ts';

const opened = (project: JsonObject) => {
  const session = createSession();
  session.open(project, null, 'yard', null);
  return { session, now: () => { const open = session.get(); if (open === null) throw new Error('nothing is open'); return open.history; } };
};

describe('a drag', () => {
  it('is one step, however many figures it goes through', () => {
    const { session, now } = opened({ a: 1 });
    for (const a of [2, 3, 4]) session.setField('a', a, { label: 'drag', gesture: 'drag 1' });
    session.settle();
    session.setField('a', 5, { label: 'drag', gesture: 'drag 1' });
    session.undo();
    expect(present(now())).toEqual({ a: 4 });
    session.undo();
    expect(present(now())).toEqual({ a: 1 });
  });

  it('that is given up was never made', () => {
    const { session, now } = opened({ a: 1 });
    session.setField('a', 2, { label: 'before' });
    session.setField('a', 3, { label: 'drag', gesture: 'drag 1' });
    session.setField('a', 4, { label: 'drag', gesture: 'drag 1' });
    session.giveUp('drag 1');
    expect(present(now())).toEqual({ a: 2 });
    expect([canUndo(now()), canRedo(now())]).toEqual([true, false]);
    session.giveUp('drag 1');
    expect(present(now())).toEqual({ a: 2 });
  });

  it('of a run of an alley that was left to its default says the whole run', () => {
    const { session, now } = opened({});
    session.setField('alley.runs[0].length', 200, { label: 'drag', gesture: 'drag 1' });
    expect(present(now())).toEqual({ alley: { runs: [{ kind: 'straight', length: 200 }] } });
  });
});
