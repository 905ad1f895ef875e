export { generateTerminology } from './generate-terminology.js';
