/** Names and looks that entities refer to: linetypes, layers, the text style. */
import { type Dash, type LayerName, type LineWeight, LINE_WEIGHT_MM } from '../../drafting/primitives.ts';

/** Color 7: black on white paper, white on a dark screen. Every layer has it, since color never carries meaning. */
export const INK = 7;

export const LINETYPE = { solid: 'CONTINUOUS', hidden: 'HIDDEN', center: 'CENTER' } as const satisfies Record<Dash, string>;

export const TEXT_STYLE = 'DRAWING';

/** What a layer's lines look like unless an entity says otherwise. */
export const LAYER_LOOK = {
  STEEL: { dash: 'solid', weight: 'thick' },
  HIDDEN: { dash: 'hidden', weight: 'thin' },
  CENTER: { dash: 'center', weight: 'thin' },
  SIZES: { dash: 'solid', weight: 'thin' },
  NOTES: { dash: 'solid', weight: 'thin' },
  MARKS: { dash: 'solid', weight: 'thin' },
  FRAME: { dash: 'solid', weight: 'thin' },
} as const satisfies Record<LayerName, { dash: Dash; weight: LineWeight }>;

/** Group 370: hundredths of a millimeter. */
export const lineweight = (weight: LineWeight): number => Math.round(LINE_WEIGHT_MM[weight] * 100);
