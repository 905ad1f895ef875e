// Threads know nothing of TypeScript by themselves; this file teaches them and begins.
import { register } from 'tsx/esm/api';

register();
await import('./load-worker.ts');
