import { EM_OF_CAPITAL } from '../../../look/drawing-font.ts';
import { drawnInk } from './drawn-ink.ts';
import { inkOf } from './ink.ts';
import { type Layer, type Scene } from './scene.ts';
import { toScreen } from './view.ts';

/** The plan itself. Between asking for another scale and its answer the picture that there is is scaled. */
export function pictureLayer(scene: Scene, chosen: () => ReadonlySet<string>): Layer {
  const { desk, state, svg } = scene;
  const world = svg.group().addClass('board-plan').attr('aria-hidden', 'true');
  const ink = drawnInk(world, EM_OF_CAPITAL);
  let drawn: { readonly picture: object; readonly chosen: object } | null = null;
  let scale: number | null = null;

  const place = (): void => {
    const view = state.view.get();
    if (view === null || scale === null) return;
    const origin = toScreen(view, scene.size(), { x: 0, y: 0 });
    const factor = view.scale / scale;
    world.node.setAttribute('transform', `translate(${origin.x.toFixed(2)} ${origin.y.toFixed(2)})${factor === 1 ? '' : ` scale(${factor.toFixed(6)})`}`);
  };
  return {
    draw: () => {
      const picture = desk.worked.get().laid?.picture ?? null;
      if (picture === null) return;
      const keys = chosen();
      if (drawn?.picture !== picture || drawn.chosen !== keys) {
        ink.draw(inkOf(picture.primitives, keys));
        drawn = { picture, chosen: keys };
        scale = picture.scale;
      }
      place();
    },
    place,
    end: () => { world.remove(); },
  };
}
