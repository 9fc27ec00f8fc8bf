import { drawProject, drawingFont, drawnBreaches } from './tests/support/drawn.ts';
import { randomProjects } from './tests/support/random-brief.ts';
import { sheetBreaches } from './tests/support/sheet-breaches.ts';
const p=[...randomProjects(204,25)][4] as any; const o=drawProject(JSON.stringify(p)); if (o.drawn) { console.log(drawnBreaches(o.set).slice(0,12)); for (const s of o.set.sheets.filter(s=>/^50/.test(s.number))) console.log(s.number,s.title,s.paper.name,s.views.map(v=>[v.id,v.scaleText,JSON.stringify(v.box)]), s.primitives.length); }
console.log(JSON.stringify(p).slice(0,3000));
