import { cleanText } from '../clean-text.ts';

const ENTITY: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** A text fit for the content or an attribute of an XML element. */
export const escapeXml = (text: string): string => cleanText(text).replace(/[&<>"]/g, (char) => ENTITY[char] ?? char);
