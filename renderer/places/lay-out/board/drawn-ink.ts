/** Keeps the picture's elements: a redraw replaces what differs and leaves the rest as it stands. */
import { type Container, type Element } from '@svgdotjs/svg.js';
import { DASHES, LINE_WEIGHT_MM } from '../../../../core/drafting/primitives.ts';
import { MM_PER_INCH } from '../../../../core/base/quantity.ts';
import { type Ink, type InkText } from './ink.ts';
import { PX } from './view.ts';

export interface DrawnInk {
  draw(ink: Ink): void;
}

/** `emOfCapital`: size of the font for a capital one unit high. */
export function drawnInk(group: Container, emOfCapital: number): DrawnInk {
  const paths = new Map<string, Element>();
  const lines = group.group().addClass('ink-lines');
  const chosenLines = group.group().addClass('ink-lines');
  const words = group.group().addClass('ink-words');
  const texts: { readonly element: Element; shown: InkText | null }[] = [];

  const pathFor = (look: string): Element => {
    const found = paths.get(look);
    if (found !== undefined) return found;
    const chosen = look.endsWith('chosen');
    const made = (chosen ? chosenLines : lines).element('path').attr(penOf(look)).addClass(chosen ? 'ink-chosen' : 'ink');
    paths.set(look, made);
    return made;
  };

  return {
    draw: (ink) => {
      for (const [look, element] of paths) if (!ink.paths.has(look)) element.node.setAttribute('d', '');
      for (const [look, d] of ink.paths) {
        const { node } = pathFor(look);
        if (node.getAttribute('d') !== d) node.setAttribute('d', d);
      }
      ink.texts.forEach((text, index) => {
        const held = (texts[index] ??= { element: words.element('text'), shown: null });
        write(held.element.node, held.shown, text, emOfCapital);
        held.shown = text;
      });
      for (const spare of texts.splice(ink.texts.length)) spare.element.remove();
    },
  };
}

const two = (value: number): string => String(Math.round(value * 100) / 100);

function write(node: Node & { setAttribute(name: string, value: string): void }, shown: InkText | null, text: InkText, em: number): void {
  const set = (name: string, before: string | undefined, now: string): void => { if (before !== now) node.setAttribute(name, now); };
  const turned = (of: InkText): string => `translate(${two(of.x)} ${two(of.y)}) rotate(${two(of.turn)})`;
  set('transform', shown === null ? undefined : turned(shown), turned(text));
  set('font-size', shown === null ? undefined : two(shown.height * em), two(text.height * em));
  set('text-anchor', shown?.anchor, text.anchor);
  set('class', shown === null ? undefined : textClass(shown), textClass(text));
  if (text.width > 0) {
    set('textLength', shown === null ? undefined : two(shown.width), two(text.width));
    set('lengthAdjust', shown === null ? undefined : 'spacingAndGlyphs', 'spacingAndGlyphs');
  }
  if (shown?.text !== text.text) node.textContent = text.text;
}

const textClass = ({ chosen }: InkText): string => (chosen ? 'ink-text ink-text-chosen' : 'ink-text');

/** Lines of a chosen piece, pixels: heavier than anything else on the sheet, so that it is found in black and white. */
const CHOSEN = 5.5;

/** The look of a line as the attributes of its path: the paper's weights and dashes at the size of the screen. */
export function penOf(look: string): Readonly<Record<string, string>> {
  const [weight, dash] = look.split(' ');
  if (weight !== 'thick' && weight !== 'thin') return {};
  if (dash !== 'solid' && dash !== 'hidden' && dash !== 'center') throw new Error(`no such line: ${look}`);
  const wide = look.endsWith('chosen') ? CHOSEN : (LINE_WEIGHT_MM[weight] / MM_PER_INCH) * PX;
  const pattern = DASHES[dash].map((part) => two(part * PX)).join(' ');
  return { fill: 'none', 'stroke-width': two(wide), ...(pattern === '' ? {} : { 'stroke-dasharray': pattern }) };
}
