import { type Field } from '../../../core/brief/format/index.ts';
import { isJsonObject, type JsonObject } from '../../../core/brief/json/types.ts';
import { PIPE_SCHEDULE_40, SHEET_GAUGE } from '../../../core/steel/index.ts';
import { runNamesOf } from '../form/run-names.ts';
import { useProject } from './use-project.ts';

const fraction = (value: number): string => {
  const whole = Math.floor(value);
  const quarters = Math.round((value - whole) * 4);
  const part = ['', '1/4', '1/2', '3/4'][quarters] ?? '';
  return [whole === 0 ? '' : String(whole), part].filter((text) => text !== '').join(' ');
};

const PIPES = PIPE_SCHEDULE_40.map(({ nominal }) => `pipe ${fraction(nominal)} sch 40`);
const GAUGES = SHEET_GAUGE.map(({ gauge }) => `${String(gauge)} ga`);

/** Names of sections that a project speaks of already, its own first. */
function ownSections(project: JsonObject): readonly string[] {
  const shop = project['shop'];
  if (!isJsonObject(shop)) return [];
  return ['sections', 'stock'].flatMap((table) => {
    const entries = shop[table];
    return isJsonObject(entries) ? Object.keys(entries) : [];
  });
}

/** What a field may be, to choose from while typing; anything else that the format takes can be typed too. */
export function useSuggestions(field: Field): readonly string[] {
  const { kind } = field.what;
  const isRun = field.pattern.endsWith('[].run');
  const own = useProject((project) => JSON.stringify(kind === 'section' ? ownSections(project) : isRun ? runNamesOf(project) : []));
  switch (field.what.kind) {
    case 'section':
      return [...new Set([...(JSON.parse(own) as string[]), ...PIPES])];
    case 'sheet':
      return GAUGES;
    case 'soil':
      return field.what.choices;
    default:
      return isRun ? (JSON.parse(own) as string[]) : [];
  }
}
