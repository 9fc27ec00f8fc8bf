export { makePdf } from './pdfkit-file.ts';
