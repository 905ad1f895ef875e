export { BIBLIOGRAPHY } from './bibliography.table.js';
export { cite } from './cite.js';
