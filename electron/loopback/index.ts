/** The browser's way in: the built page on this machine's own address, read only. */
export { startLoopback, type Loopback } from './start-loopback.ts';
