/** Words for findings. Keys start with their area and a dot. */
export const findings = {
} as const;
