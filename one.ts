import { drawnBreaches, drawProject } from './tests/support/drawn.ts';
import { randomProjects } from './tests/support/random-brief.ts';
const p=[...randomProjects(3,3)][2]; const o=drawProject(JSON.stringify(p)); if (o.drawn) { const w=drawnBreaches(o.set); console.log(w.length, w.slice(0,5)); }
