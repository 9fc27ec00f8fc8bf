/** The id of the element where a field is typed: a path without the characters that an id list can't hold. */
export const fieldId = (path: string): string =>
  `field-${path.replace(/[^A-Za-z0-9]/g, (character) => `_${(character.codePointAt(0) ?? 0).toString(16)}_`)}`;
