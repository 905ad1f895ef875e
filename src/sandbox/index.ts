export { createSandbox, type SandboxOptions, SandboxRefused } from './create-sandbox.js';
export { type Alteration, createFaults, type Fault, type Faults } from './faults.js';
export type { Supports } from './interaction.js';
export { prepareSandbox, wipeSandbox } from './prepare-sandbox.js';
export type { AnyDatabase } from './tables.js';
