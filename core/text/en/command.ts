/** Words for command. Keys start with their area and a dot. */
export const command = {
} as const;
