import { SVG } from '@svgdotjs/svg.js';
import { type DeskWindow } from '../../../app/desk-window.ts';
import { boardAsks } from './board-asks.ts';
import { boardCorner } from './board-corner.ts';
import { boardKeys } from './board-keys.ts';
import { fitFurther, fitWhole } from './board-moves.ts';
import { boardPointer } from './board-pointer.ts';
import { type BoardState } from './board-state.ts';
import { chosenPiece } from './chosen-piece.ts';
import { figureTag } from './figure-tag.ts';
import { findingLayer } from './finding-layer.ts';
import { handleLayer } from './handle-layer.ts';
import { leadToFinding } from './lead-to-finding.ts';
import { measureLayer } from './measure-layer.ts';
import { pictureLayer } from './picture-layer.ts';
import { redrawTimes } from './redraw-times.ts';
import { viewOfPieces } from './seek-piece.ts';
import { type Layer, type Scene } from './scene.ts';

/**
 * Puts the live plan into an svg element and keeps it to the window's stores by itself: nothing of it waits for React. Returns what takes
 * it away again.
 */
export function makeBoard(element: SVGSVGElement, tagElement: HTMLElement, desk: DeskWindow, state: BoardState): () => void {
  const svg = SVG(element);
  const measureSheet = (): void => { state.setSize({ width: element.clientWidth, height: element.clientHeight }); };
  measureSheet();
  const corner = boardCorner(element);
  const scene: Scene = { desk, state, svg, size: state.size, corner: corner.at, rings: [] };
  const times = redrawTimes(desk);
  const piece = chosenPiece(desk, state, () => { draw(); });
  const [picture, findings, handles] = [pictureLayer(scene, piece.keys), findingLayer(scene), handleLayer(scene, figureTag(tagElement))];
  // In the order of drawing, but that the rings say where they stand before the numbers look for room.
  const measure = measureLayer(scene, piece.markOf);
  const layers: readonly Layer[] = [picture, handles, findings, measure];

  const place = (): void => { for (const layer of layers) layer.place(); };
  const seek = (): void => {
    const shown = desk.worked.get().laid?.picture ?? null;
    const view = state.view.get();
    const next = state.sought.get() === null || shown === null || view === null ? null : viewOfPieces(shown, piece.keys(), view, state.size());
    if (next === null) return;
    state.sought.set(null);
    state.view.set(next);
  };
  const draw = (): void => {
    const shown = desk.worked.get().laid?.picture ?? null;
    if (state.view.get() === null) fitWhole(state, shown);
    else fitFurther(state, shown);
    for (const layer of layers) layer.draw();
    times.drawn();
    seek();
  };
  const sized = new ResizeObserver(() => {
    measureSheet();
    corner.forget();
    place();
  });
  sized.observe(element);
  const lets = [
    desk.worked.subscribe(draw), desk.selection.subscribe(draw), state.shows.subscribe(draw), state.measuring.subscribe(draw), state.wanted.subscribe(draw),
    state.view.subscribe(place), state.sought.subscribe(seek),
    boardAsks(desk, state), leadToFinding(scene),
    boardPointer(scene, (at) => { (state.measuring.get() === null ? piece : measure).choose(at); }, measure.hover), boardKeys(scene, measure.key),
    times.end, piece.end, corner.end,
  ];
  draw();
  return () => {
    sized.disconnect();
    for (const let_ of lets) let_();
    for (const layer of layers) layer.end();
  };
}
