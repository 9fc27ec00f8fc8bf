import { drawProject, drawnBreaches } from './tests/support/drawn.ts';
import { randomProjects } from './tests/support/random-brief.ts';
for (const [s,i] of [[216,16],[217,23]]) { const p=[...randomProjects(s!,25)][i!] as any; const o=drawProject(JSON.stringify(p)); if (o.drawn) console.log(drawnBreaches(o.set).slice(0,12)); }
