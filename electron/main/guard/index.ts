/** What keeps the page in its place. */
export { answerMessages, type MessageEnd } from './answer-messages.ts';
export { denyReach, denyWays } from './deny.ts';
export { isFromPage } from './sender.ts';
