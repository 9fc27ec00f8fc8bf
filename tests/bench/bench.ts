/** `npm run bench`: how long the work takes, printed and never asserted. Best of some runs; an error alone ends it with a failure. */
import { createPipeline } from '../../core/package/index.ts';
import { HOME } from '../../electron/command/terminal-io.ts';
import { packageTools } from '../../electron/command/tools.ts';
import { buildPage } from '../../electron/start/build-window.ts';
import { outside } from '../support/outside.ts';
import { cuttingRows } from './cutting.ts';
import { dragRows } from './drag-in-browser.ts';
import { dxfRows } from './dxf-writers.ts';
import { growthRows } from './growth.ts';
import { designOf, grownProject } from './grown-project.ts';
import { nestingLines } from './nesting.ts';
import { table } from './timing.ts';

const { font } = packageTools();
console.log(table(growthRows(font)));
console.log('');
const pipeline = createPipeline(font);
console.log(table(dxfRows(pipeline.drawings(designOf(font, grownProject(font, 4).text)), font)));
console.log('');
console.log(nestingLines());
console.log('');
console.log(table(await cuttingRows(font)));
if (outside('chromium')) {
  console.log('');
  await buildPage(HOME);
  console.log(table(await dragRows(font)));
}
