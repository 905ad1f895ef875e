export { BIBLIOGRAPHY } from './bibliography.js';
export { cite } from './cite.js';
