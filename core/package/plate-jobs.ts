import { type Units } from '../schedules/index.ts';
import { tableModel } from '../shop/plates/index.ts';
import { say } from '../text/index.ts';
import { writeTableFile } from '../writers/index.ts';
import { type Job } from './job.ts';
import { type ShopPlates } from './shop-plates.ts';
import { utf8 } from './utf8.ts';

/** One file a plate that a table can cut, full size in the package's units. */
export const plateJobs = ({ plates }: ShopPlates, units: Units): readonly Job[] =>
  plates.filter((plate) => plate.refusal === null).map((plate) => ({
    path: `plates/${plate.mark}.dxf`,
    kind: 'plates',
    title: say('plates.title', { mark: plate.mark, quantity: plate.quantity, section: plate.section }),
    make: () => utf8(writeTableFile(tableModel([plate.shape], plate.etch ?? []), units)),
  }));
