export { type Keyed, resourcesIn } from './keys.js';
export { publishedViews } from './published.js';
export { type Cell, columnsOf, runView, type ViewRow } from './run-view.js';
export { parseView, type View } from './view.js';
export { ViewFault } from './view-fault.js';
