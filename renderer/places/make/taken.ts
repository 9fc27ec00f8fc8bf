/** What is taken out of the flat file: the bars to cut, a drawing by its place in the set, or a schedule by its name. */
export type Taken = { readonly kind: 'bars' } | { readonly kind: 'drawing'; readonly index: number } | { readonly kind: 'schedule'; readonly id: string };
