import { type Units } from '../schedules/index.ts';
import { laidPlates, type ShopPlates } from '../shop/nesting/index.ts';
import { tableModel } from '../shop/plates/index.ts';
import { say } from '../text/index.ts';
import { writeTableFile } from '../writers/index.ts';
import { type Job } from './job.ts';
import { utf8 } from './utf8.ts';

/** One file a plate that a table can cut, full size in the package's units. */
export const plateJobs = ({ plates }: ShopPlates, units: Units): readonly Job[] =>
  plates.filter((plate) => plate.refusal === null).map((plate) => ({
    path: `plates/${plate.mark}.dxf`,
    kind: 'plates',
    title: say('plates.title', { mark: plate.mark, quantity: plate.quantity, section: plate.section }),
    make: () => utf8(writeTableFile(tableModel([plate.shape], plate.etch ?? []), units)),
  }));

/** One file a stock sheet, full size: the outlines and marks of its plates where they lie, and nothing of the sheet itself. */
export const nestJobs = ({ plates, nests }: ShopPlates, units: Units): readonly Job[] =>
  nests.flatMap(({ section, sheets }) => sheets.flatMap(({ names, parts }) => names.map((name): Job => ({
    path: `nests/${name}.dxf`,
    kind: 'nests',
    title: say('nests.file-title', { name, section }),
    make: () => {
      const laid = laidPlates(plates, parts);
      return utf8(writeTableFile(tableModel(laid.map(({ shape }) => shape), laid.flatMap(({ etch }) => etch)), units));
    },
  }))));
