export type { Config } from './config.js';
export { keysFileOf, loadConfig, showConfig } from './load-config.js';
export { ownSiteSecret, SiteSecretRefused } from './site-secret.js';
export { VARIABLES } from './variables.table.js';
