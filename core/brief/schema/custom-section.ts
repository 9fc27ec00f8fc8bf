import { type Inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { parseLength } from '../../units/index.ts';
import { parseSection, rectangularSection, roundSection, type Section } from '../../steel/index.ts';
import { isJsonObject, type Json } from '../json/types.ts';
import { fault, leaf } from './leaf.ts';

const asLength = (value: Json | undefined): Inches | null =>
  typeof value === 'number' || typeof value === 'string' ? parseLength(value) : null;

/** The sizes of `{ outside, wall }`: one outside size for round, two (across, upright) for a tube with corners. */
function sizes(value: Json): readonly Inches[] | null {
  if (!isJsonObject(value) || Object.keys(value).some((key) => key !== 'outside' && key !== 'wall')) return null;
  const { outside, wall } = value;
  const parts = [...(Array.isArray(outside) ? (outside as readonly Json[]) : [outside]), wall].map(asLength);
  return parts.some((part) => part === null) || parts.length < 2 || parts.length > 3 ? null : parts.filter((part) => part !== null);
}

function made(parts: readonly Inches[]): Section | null {
  const [first, second, third] = parts;
  if (first === undefined || second === undefined) return null;
  return third === undefined ? roundSection('', first, second) : rectangularSection('', first, second, third);
}

/** A section of the shop's own by outside size and wall, its name still empty. */
export const customSection = () =>
  leaf<Section>({ kind: 'custom-section' }, () => say('allowed.custom-section'), (value) => {
    if (typeof value === 'string') {
      const section = parseSection(value);
      return section === null ? fault('fault.pattern', { allowed: say('allowed.custom-section') }) : { value: section };
    }
    const parts = sizes(value as Json);
    if (parts === null) return fault('fault.pattern', { allowed: say('allowed.custom-section') });
    const section = made(parts);
    return section === null ? fault('fault.section-size', {}) : { value: section };
  });
