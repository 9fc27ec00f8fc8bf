import { type Handle } from '../../../../core/board/types.ts';
import { type Vec } from '../../../../core/base/points.ts';
import { MM_PER_INCH } from '../../../../core/base/quantity.ts';
import { say } from '../../../../core/text/index.ts';
import { type Units } from '../../../worker/protocol.ts';
import { printFigure } from '../figures.ts';
import { type FigureTag } from './figure-tag.ts';
import { handleDrag } from './handle-drag.ts';
import { handleKeys } from './handle-keys.ts';
import { handleShape, type HandleShape } from './handle-shape.ts';
import { type Layer, onScreen, type Scene } from './scene.ts';
import { shownHandles } from './shown-handles.ts';

interface Standing {
  readonly shape: HandleShape;
  handle: Handle;
  drop(): void;
}

/** What a hand takes hold of: each a slider that takes focus, arrow keys and the pointer. */
export function handleLayer(scene: Scene, tag: FigureTag): Layer {
  const { desk, state, svg } = scene;
  const group = svg.group().addClass('board-handles');
  const standing = new Map<string, Standing>();

  const stand = (handle: Handle): Standing => {
    const shape = handleShape(group, handle.figure);
    const { node } = shape.group;
    const now = (): Handle => standing.get(handle.id)?.handle ?? handle;
    shape.group.attr({ role: 'slider', tabindex: 0, 'data-handle': handle.id });
    const lets = [handleDrag(scene, node, now, tag), handleKeys(scene, node, now)];
    return { shape, handle, drop: () => { for (const let_ of lets) let_(); shape.group.remove(); } };
  };

  const held = (): ReadonlySet<string> => {
    const focused = svg.node.ownerDocument.activeElement?.getAttribute('data-handle');
    return new Set([focused, state.typing.get(), state.wanted.get()].filter((id) => typeof id === 'string'));
  };

  const place = (): void => {
    const rings: Vec[] = [];
    for (const { shape, handle } of standing.values()) {
      const at = onScreen(scene, handle.at);
      shape.put(at.x, at.y, handle.grows);
      rings.push(at);
    }
    scene.rings = rings;
  };

  const draw = (): void => {
    const { laid } = desk.worked.get();
    if (laid === null || state.view.get() === null) return;
    const { run, field } = desk.selection.get();
    const shown = shownHandles(laid.handles, run, (handle) => onScreen(scene, handle.at), held());
    const kept = new Set(shown.map(({ id }) => id));
    for (const [id, { drop }] of standing) {
      if (kept.has(id)) continue;
      drop();
      standing.delete(id);
    }
    for (const handle of shown) {
      const one = standing.get(handle.id) ?? stand(handle);
      one.handle = handle;
      standing.set(handle.id, one);
      const { node } = one.shape.group;
      tell(node, handle, laid.units);
      node.classList.toggle('handle-here', handle.run === run);
      node.classList.toggle('handle-chosen', handle.path === field);
    }
    group.node.classList.toggle('board-handles-away', state.measuring.get() !== null);
    place();
    const wanted = state.wanted.get();
    const wish = wanted === null ? undefined : standing.get(wanted);
    if (wish !== undefined) {
      state.wanted.set(null);
      wish.shape.group.node.focus();
    }
  };
  return {
    draw,
    // Which handles keep clear of each other follows from the scale.
    place: draw,
    end: () => {
      for (const { drop } of standing.values()) drop();
      group.remove();
    },
  };
}

function tell(node: Element, handle: Handle, units: Units): void {
  const { figure, label, least, greatest, value } = handle;
  const plain = (of: number): string => String(Math.round((figure === 'angle' ? (of * 180) / Math.PI : units === 'mm' ? of * MM_PER_INCH : of) * 100) / 100);
  const wanted: Readonly<Record<string, string>> = {
    'aria-label': say('place-lay-out.handle', { label }),
    'aria-valuemin': plain(least),
    'aria-valuemax': plain(greatest),
    'aria-valuenow': plain(value),
    'aria-valuetext': printFigure(figure, value, units),
  };
  for (const [name, text] of Object.entries(wanted)) if (node.getAttribute(name) !== text) node.setAttribute(name, text);
}
