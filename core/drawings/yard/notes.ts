import { type Brief } from '../../brief/types.ts';
import { say } from '../../text/index.ts';

/** What the drawings of pad, floors and sort pens say beside their figures, in the words of the brief where it has its own. */
export function yardNotes(brief: Brief): readonly string[] {
  const { floors, squeezePad: pad, sortPens } = brief;
  const percent = String(Math.round(floors.fall * 1000) / 10);
  const roof = pad?.roof ?? null;
  const open = roof === null || roof.open.length === 0 ? say('drawings.yard.side.none') : roof.open.map((side) => say(`drawings.yard.side.${side}`)).join(', ');
  return [
    ...(floors.pattern === '' ? [] : [say('drawings.yard.note.pattern', { pattern: floors.pattern })]),
    floors.fall === 0 ? say('drawings.yard.note.level') : say('drawings.yard.note.fall', { percent }),
    say('drawings.yard.note.slab'),
    ...(pad === null ? [] : [say('drawings.yard.note.anchors'), say('drawings.yard.note.wayOut')]),
    ...(roof === null ? [] : [say('drawings.yard.note.roof', { open, share: String(Math.round(roof.daylight * 1000) / 10) }), say('drawings.yard.note.engineer')]),
    ...(sortPens.length === 0 ? [] : [say('drawings.yard.note.sort')]),
    say('drawings.yard.note.codes'),
  ];
}
