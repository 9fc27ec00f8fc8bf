/** What setting up takes for granted. Common practice of the trade, no source, unless said; local rules and licensed practice come first. */
export const SET_UP_PRACTICE = {
  /** Days that concrete stands before rails are hung on its posts, and before gates or cattle come to them. */
  cureDays: { rails: 3, load: 7 },
  /** More people than this at one lift: a loader or a hoist. */
  mostPeople: 4,
} as const;
