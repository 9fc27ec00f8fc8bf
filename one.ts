import { drawProject, drawnBreaches } from './tests/support/drawn.ts';
import { randomProjects } from './tests/support/random-brief.ts';
for (const [s,i] of [[103,11]]) { const p=[...randomProjects(s!,25)][i!] as any; const o=drawProject(JSON.stringify(p)); if (o.drawn) { console.log(drawnBreaches(o.set).slice(0,12)); const k='rail/junction/right/4/7'; console.log(o.set.parts.pieces.find(q=>q.key===k)); for (const s of o.set.sheets.filter(s=>s.number==='403')) for (const q of s.primitives) if ((q as any).pieces?.includes(k)) console.log(JSON.stringify(q)); } }
