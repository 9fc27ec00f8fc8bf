import { drawProject, drawingFont } from './tests/support/drawn.ts';
import { randomProjects } from './tests/support/random-brief.ts';
import { holdingPlan } from './core/drawings/yard/holding-plan.ts';
import { boundsOf, extremesOf } from './core/drawings/bounds.ts';
for (const i of [21]) { const p=[...randomProjects(202,25)][i] as any; const o=drawProject(JSON.stringify(p)); if (o.drawn) { const {brief,layout,parts}=o.set; 
for (const pen of layout.holdingPens) { const d=holdingPlan({brief,layout,parts,font:drawingFont}, pen); console.log(pen.brief, d.bounds, boundsOf(d.shapes.flatMap((s:any)=>s.kind==='curve'?extremesOf(s.curve):[s.center]))); console.log(layout.fences.filter(f=>f.run.startsWith(pen.brief.name)).map(f=>[f.run,f.side])); console.log(d.shapes.filter((s:any)=>s.kind==='circle').map((s:any)=>s.center)); break;} } }
