// What packages written for Node.js take as given; the bundler puts it in wherever they name it.

export { Buffer } from 'buffer';

export const process = { env: {}, nextTick: (task: (...with_: unknown[]) => void, ...with_: unknown[]) => queueMicrotask(() => task(...with_)) };
