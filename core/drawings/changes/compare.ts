/** A set of drawings against an earlier issue of it: each view, table, note and bar that differs gets its cloud, each drawing that has any is told. */
import { type Drawing, type Note, type Table, type View } from '../../drafting/model.ts';
import { say } from '../../text/index.ts';
import { barsBefore, changedBars } from './changed-bars.ts';
import { changedPlaces } from './changed-places.ts';

export type ChangeKind = 'new' | 'changed' | 'gone';

/** A drawing that differs, by its number and title; of one that is gone those that it had. */
export interface DrawingChange {
  readonly number: string;
  readonly title: string;
  readonly kind: ChangeKind;
}

export interface Compared {
  readonly drawings: readonly Drawing[];
  readonly changes: readonly DrawingChange[];
}

/** A view or table by what it shows, whichever page of its series it stands on: the first of that name, the second, ... */
function keyed<T>(drawings: readonly Drawing[], of: (drawing: Drawing) => readonly T[], name: (one: T) => string): Map<T, string> {
  const counts = new Map<string, number>();
  const keys = new Map<T, string>();
  for (const drawing of drawings) {
    for (const one of of(drawing)) {
      const plain = `${seriesOf(drawing)} ${name(one)}`;
      const count = counts.get(plain) ?? 0;
      counts.set(plain, count + 1);
      keys.set(one, `${plain} ${String(count)}`);
    }
  }
  return keys;
}

/** What stands before the last two digits of its number. */
const seriesOf = ({ number }: Drawing): string => number.slice(0, -2);

const inverse = <T>(keys: ReadonlyMap<T, string>): Map<string, T> => new Map([...keys].map(([one, key]) => [key, one]));

export function compareDrawings(now: readonly Drawing[], then: readonly Drawing[]): Compared {
  const views = keyed(now, (drawing) => drawing.views, (view) => view.id);
  const tables = keyed(now, (drawing) => drawing.tables, (table) => table.title);
  const oldViews = inverse(keyed(then, (drawing) => drawing.views, (view) => view.id));
  const oldTables = inverse(keyed(then, (drawing) => drawing.tables, (table) => table.title));
  const notes = keyed(now, (drawing) => drawing.notes, (note) => note.title);
  const oldNotes = inverse(keyed(then, (drawing) => drawing.notes, (note) => note.title));
  const bars = barsBefore(then.flatMap((drawing) => drawing.bars ?? []));
  const changes: DrawingChange[] = [];
  const drawings = now.map((drawing): Drawing => {
    const known = drawing.views.some((view) => oldViews.has(views.get(view)!)) || drawing.tables.some((table) => oldTables.has(tables.get(table)!))
      || (drawing.views.length === 0 && drawing.tables.length === 0);
    const told = { number: drawing.number, title: drawing.title };
    if (!known) {
      changes.push({ ...told, kind: 'new' });
      return drawing;
    }
    const shown = drawing.views.map((view): View => {
      const before = oldViews.get(views.get(view)!);
      const places = before === undefined ? [wholeOf(view)] : changedPlaces(view, before).map(({ left, right, low, high }) => ({ left, right, low, high }));
      return places.length === 0 ? view : { ...view, clouds: places };
    });
    const clouded = drawing.tables.filter((table) => differs(table, oldTables.get(tables.get(table)!)));
    const noted = drawing.notes.filter((note) => reworded(note, oldNotes.get(notes.get(note)!)));
    const cut = (drawing.bars ?? []).flatMap((chart) => changedBars(chart, bars, say('cut.goes-on')));
    if (clouded.length + noted.length + cut.length === 0 && shown.every(({ clouds }) => clouds === undefined)) return drawing;
    changes.push({ ...told, kind: 'changed' });
    return { ...drawing, views: shown, cloudedTables: clouded, cloudedNotes: noted, cloudedBars: cut };
  });
  const kept = new Set([...views.values(), ...tables.values()]);
  const gone = then.filter((drawing) => drawing.views.length + drawing.tables.length > 0)
    .filter((drawing) => ![...drawing.views.map((view) => [...oldViews].find(([, one]) => one === view)![0]), ...drawing.tables.map((table) => [...oldTables].find(([, one]) => one === table)![0])].some((key) => kept.has(key)));
  return { drawings, changes: [...changes, ...gone.map(({ number, title }): DrawingChange => ({ number, title, kind: 'gone' }))] };
}

/** A view that was not there: all of it. */
function wholeOf(view: View): { readonly left: number; readonly right: number; readonly low: number; readonly high: number } {
  const at = (x: number, y: number): readonly [number, number] => [(x - view.at.x) / view.scale, (y - view.at.y) / view.scale];
  const [left, low] = at(view.box.x, view.box.y);
  const [right, high] = at(view.box.x + view.box.width, view.box.y + view.box.height);
  return { left, right, low, high };
}

const reworded = (note: Note, before: Note | undefined): boolean => before === undefined || JSON.stringify(note.lines) !== JSON.stringify(before.lines);

const differs = (table: Table, before: Table | undefined): boolean =>
  before === undefined || JSON.stringify([table.columns, table.rows]) !== JSON.stringify([before.columns, before.rows]);
