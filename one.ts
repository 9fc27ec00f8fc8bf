import { drawProject, drawnBreaches } from './tests/support/drawn.ts';
import fs from 'node:fs'; import { writePdf } from './core/writers/index.ts'; import { makePdf } from './electron/pdf/index.ts'; import { drawingFont } from './tests/support/drawn.ts';
const o=drawProject(fs.readFileSync('shared/examples/winter-quill.penwright.json','utf8')); if (o.drawn) { console.log(drawnBreaches(o.set).slice(0,12)); const some=o.set.sheets.filter(s=>/^15/.test(s.number)); console.log(some.length);
fs.writeFileSync('/tmp/prof/n.pdf', await writePdf(some, drawingFont, {title:'',subject:'',author:'',creator:'',date:null}, makePdf)); }
