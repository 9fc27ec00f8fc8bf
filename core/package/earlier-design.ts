import { type Font } from '../drafting/font.ts';
import { createPipeline, type Pipeline, type Units } from './pipeline.ts';

/** The design of an earlier issue from its project's text, in the units of the one that is compared with it, or what is wrong with it. */
export function earlierDesign(font: Font, text: string, units: Units): ReturnType<Pipeline['design']> {
  const pipeline = createPipeline(font);
  const read = pipeline.read(text, units);
  return read.ok ? pipeline.design(read.brief) : read;
}
