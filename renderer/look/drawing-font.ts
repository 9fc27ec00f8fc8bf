/** Size of the drawing font (em) for a capital one unit high: its units per em over its capitals' height, as its own tables say. */
export const EM_OF_CAPITAL = 1000 / 714;
