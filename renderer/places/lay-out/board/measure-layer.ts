import { type Element, type G } from '@svgdotjs/svg.js';
import { planPoint, type PlanPoint, type Vec } from '../../../../core/base/points.ts';
import { say } from '../../../../core/text/index.ts';
import { type MeasurePoint } from './board-state.ts';
import { measured } from './measured.ts';
import { namedPlaces } from './named-places.ts';
import { type Layer, onScreen, type Scene } from './scene.ts';
import { snap } from './snap.ts';
import { PX } from './view.ts';

export interface MeasureLayer extends Layer {
  /** The place that is meant lies under the hand. */
  hover(at: PlanPoint): void;
  /** Measures from there, then to there, then from there anew. */
  choose(at: PlanPoint): void;
  /** Keys while measuring: arrow keys move the place that is meant, Enter chooses it. Whether the key was one of these. */
  key(event: KeyboardEvent): boolean;
}

/** How far an arrow key moves the place that is meant, pixels; with Shift so many times less far. */
const STEP = 12;
const FINE = 6;
/** Head of a dimension's arrow, pixels long; a third as wide (ASME Y14.2). */
const HEAD = 13;

/** Measuring on the board: the two places, and the dimension between them. */
export function measureLayer(scene: Scene, markOf: (piece: string) => string | null): MeasureLayer {
  const { desk, state, svg } = scene;
  const group = svg.group().addClass('board-measure').attr('aria-hidden', 'true');
  const line = group.element('path').addClass('measure-line');
  const heads = group.element('path').addClass('measure-heads');
  const rings = [ring(group), ring(group)] as const;
  const text = group.element('text').addClass('measure-text');
  /** What is meant, and where the hand itself is: drawn to an end it goes on from where it was. */
  let under: MeasurePoint | null = null;
  let free: PlanPoint | null = null;

  const meant = (at: PlanPoint): MeasurePoint => {
    const { laid } = desk.worked.get();
    const picture = laid?.picture ?? null;
    const view = state.view.get();
    if (laid === null || picture === null || view === null) return { at, name: '' };
    // The picture may be of an earlier scale: pixels on the screen are counted in its inches.
    const found = snap(picture, namedPlaces(laid.stations), at, (PX * view.scale) / picture.scale);
    const mark = found.piece === null ? null : markOf(found.piece);
    return { at: found.at, name: found.name ?? (mark === null ? '' : say('place-lay-out.named.piece', { mark })) };
  };
  const place = (): void => {
    const now = state.measuring.get();
    group.node.classList.toggle('board-measure-away', now === null);
    svg.node.classList.toggle('board-measuring', now !== null);
    const laid = desk.worked.get().laid;
    if (now === null || laid === null) {
      under = null;
      return;
    }
    const from = now.from ?? under;
    const to = now.from === null ? null : (now.to ?? under);
    showRing(rings[0], from === null ? null : onScreen(scene, from.at));
    showRing(rings[1], to === null ? null : onScreen(scene, to.at));
    const both = from !== null && to !== null;
    const [a, b] = both ? [onScreen(scene, from.at), onScreen(scene, to.at)] : [{ x: 0, y: 0 }, { x: 0, y: 0 }];
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    line.node.setAttribute('d', long > 0 ? `M${pair(a)}L${pair(b)}` : '');
    heads.node.setAttribute('d', long > 2 * HEAD ? `${head(a, b)}${head(b, a)}` : '');
    text.node.textContent = both ? measured(from.at, to.at, laid.units).straight : '';
    if (!both) return;
    const upright = Math.atan2(b.y - a.y, b.x - a.x);
    const turn = Math.abs(upright) > Math.PI / 2 ? upright + Math.PI : upright;
    text.node.setAttribute('transform', `translate(${pair({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })}) rotate(${((turn * 180) / Math.PI).toFixed(1)}) translate(0 -8)`);
  };
  const hover = (at: PlanPoint): void => {
    if (state.measuring.get() === null) return;
    free = at;
    under = meant(at);
    place();
  };
  const choose = (at: PlanPoint): void => {
    const now = state.measuring.get();
    const point = meant(at);
    if (now === null) return;
    if (now.from === null || now.to !== null) state.measuring.set({ from: point, to: null });
    else state.measuring.set({ from: now.from, to: point });
  };
  return {
    draw: place,
    place,
    hover,
    choose,
    key: (event) => {
      const view = state.view.get();
      if (state.measuring.get() === null || view === null) return false;
      const ways: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
      const way = ways[event.key];
      const at = free ?? under?.at ?? view.middle;
      if (way !== undefined) {
        const step = (event.shiftKey ? STEP / FINE : STEP) / (view.scale * PX);
        hover(planPoint(at.x + way[0] * step, at.y + way[1] * step));
        return true;
      }
      if (event.key !== 'Enter') return false;
      choose(at);
      return true;
    },
    end: () => { group.remove(); },
  };
}

const pair = ({ x, y }: Vec): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

const ring = (group: G): Element => group.element('circle').attr({ r: 9 }).addClass('measure-ring');

function showRing({ node }: Element, at: Vec | null): void {
  node.classList.toggle('measure-ring-away', at === null);
  if (at !== null) node.setAttribute('transform', `translate(${pair(at)})`);
}

/** An arrowhead at `tip`, seen from `from`. */
function head(from: Vec, tip: Vec): string {
  const long = Math.hypot(tip.x - from.x, tip.y - from.y);
  const [ux, uy] = [(tip.x - from.x) / long, (tip.y - from.y) / long];
  const back = { x: tip.x - ux * HEAD, y: tip.y - uy * HEAD };
  const half = HEAD / 6;
  return `M${pair(tip)}L${pair({ x: back.x - uy * half, y: back.y + ux * half })}L${pair({ x: back.x + uy * half, y: back.y - ux * half })}Z`;
}
