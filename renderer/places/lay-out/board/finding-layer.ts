import { type Element, type G } from '@svgdotjs/svg.js';
import { type PlanPoint, sub, type Vec } from '../../../../core/base/points.ts';
import { type BoardPicture } from '../../../../core/board/types.ts';
import { findingTitle, runOfFinding, type ShownFinding, shownFindings } from '../shown-findings.ts';
import { dotPlaces } from './dot-places.ts';
import { wordPlaces } from './word-places.ts';
import { whereWords } from '../../../parts/finding-words.ts';
import { type Layer, onScreen, type Scene } from './scene.ts';

const RADIUS = 13;

interface Dot {
  readonly element: G;
  readonly leader: Element;
  readonly one: Placed;
  /** How far from its place it stands, pixels; undefined: nowhere yet. */
  readonly off?: Vec;
}

type Placed = ShownFinding & { readonly at: PlanPoint };

/** Where the findings are: a dot with its number; the chosen one has a ring. */
export function findingLayer(scene: Scene): Layer {
  const { desk, state, svg } = scene;
  const group = svg.group().addClass('board-findings');
  const ring = group.element('circle').attr({ r: 34 }).addClass('finding-ring');
  let dots: Dot[] = [];
  let drawn: readonly unknown[] = [];
  let words: { readonly picture: object; readonly places: readonly Vec[] } | null = null;
  const wordsOf = (picture: BoardPicture | null): readonly Vec[] => {
    if (picture === null) return [];
    if (words?.picture !== picture) words = { picture, places: wordPlaces(picture) };
    return words.places;
  };

  const dot = (one: Placed): Dot => {
    const element = group.group().addClass(`finding-dot finding-${one.finding.result}`);
    const leader = element.element('path').addClass('finding-leader');
    element.element('circle').attr({ r: 22 }).addClass('finding-touch');
    element.element('circle').attr({ r: RADIUS }).addClass('finding-spot');
    element.element('text').attr({ 'text-anchor': 'middle', y: 5 }).node.textContent = String(one.number ?? '');
    element.attr({ role: 'button', tabindex: 0, 'aria-label': findingLabel(one) });
    const choose = (event: Event): void => {
      event.stopPropagation();
      const runs = desk.worked.get().laid?.stations.runs.map(({ run }) => run) ?? [];
      desk.select({ finding: desk.selection.get().finding === one.index ? null : one.index, run: runOfFinding(one.finding, runs), mark: null });
    };
    element.node.addEventListener('pointerdown', (event) => { event.stopPropagation(); });
    element.node.addEventListener('click', choose);
    element.node.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      event.preventDefault();
      choose(event);
    });
    return { element, leader, one };
  };

  const place = (): void => {
    const { finding } = desk.selection.get();
    const at = finding === null ? null : (desk.worked.get().laid?.findings[finding]?.at ?? null);
    ring.node.classList.toggle('finding-ring-away', at === null);
    if (at !== null) moveTo(ring.node, onScreen(scene, at));
    const places = dots.map(({ one }) => onScreen(scene, one.at));
    const written = wordsOf(desk.worked.get().laid?.picture ?? null).map((at) => onScreen(scene, at));
    const stand = dotPlaces(places, [...scene.rings, ...written], state.dragged.get() === null ? [] : dots.map(({ off }) => off));
    dots.forEach(({ element, leader, one }, i) => {
      const [from, to] = [places[i] ?? never(i), stand[i] ?? never(i)];
      moveTo(element.node, to);
      dots[i] = { element, leader, one, off: sub(to, from) };
      leader.node.setAttribute('d', `M${(from.x - to.x).toFixed(1)} ${(from.y - to.y).toFixed(1)}L0 0`);
      element.node.classList.toggle('finding-chosen', one.index === finding);
    });
  };
  return {
    draw: () => {
      const findings = state.shows.get().places ? shownFindings(desk.worked.get().laid?.findings ?? []) : [];
      const placed = findings.flatMap((one) => (one.finding.at === null ? [] : [{ ...one, at: one.finding.at }]));
      // While a hand moves, the places move and seldom the findings: the dots stay and are moved.
      const now = placed.flatMap((one) => [one.index, one.number, findingLabel(one)]);
      if (now.length === drawn.length && now.every((part, i) => part === drawn[i])) {
        dots = dots.map((held, i) => ({ ...held, one: placed[i] ?? never(i) }));
      } else {
        for (const { element } of dots) element.remove();
        dots = placed.map(dot);
        drawn = now;
      }
      place();
    },
    place,
    end: () => { group.remove(); },
  };
}

const moveTo = (node: SVGElement, { x, y }: Vec): void => { node.setAttribute('transform', `translate(${x.toFixed(1)} ${y.toFixed(1)})`); };

function never(index: number): never {
  throw new Error(`no finding ${String(index)}`);
}

const findingLabel = (one: ShownFinding): string => `${findingTitle(one)}, ${whereWords(one.finding)}`;
