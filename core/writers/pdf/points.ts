/** Points of a PDF in an inch (ISO 32000, default user space). */
export const POINTS = 72;
