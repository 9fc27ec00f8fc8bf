/** What a drawing or a table is written as. */
export { writeDxf } from './dxf/write.ts';
export { writeSvg } from './svg/write.ts';
export { writePdf } from './pdf/write.ts';
export { type MakePdf, type PdfFile, type PdfInfo, type PdfPage, type PdfText } from './pdf/page.ts';
export { type CsvColumn, type CsvFigure, csvCells, writeCsv } from './csv.ts';
export { writeJson } from './json.ts';
export { writeTableFile } from './table-file.ts';
