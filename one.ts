import { drawProject, drawingFont, drawnBreaches } from './tests/support/drawn.ts';
import { randomProjects } from './tests/support/random-brief.ts';
const p=[...randomProjects(209,25)][4] as any; const o=drawProject(JSON.stringify(p)); if (o.drawn) { console.log(drawnBreaches(o.set).slice(0,12)); for (const s of o.set.sheets.filter(s=>/^80/.test(s.number))) console.log(s.number,s.title,s.paper.name,s.views.map(v=>[v.id,v.title,v.scaleText,JSON.stringify(v.box)]), s.primitives.length); }
