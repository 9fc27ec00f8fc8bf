/** Words for faults. Keys start with their area and a dot. */
export const faults = {
} as const;
