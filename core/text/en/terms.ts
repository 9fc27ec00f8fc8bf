/** Words for terms. Keys start with their area and a dot. */
export const terms = {
} as const;
