/** Words for drawings. Keys start with their area and a dot. */
export const drawings = {
} as const;
