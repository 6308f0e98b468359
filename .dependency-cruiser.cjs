/** The layer rule: renderer -> contract + engine; electron -> engine; engine -> nothing of ours; no cycles. */
module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'engine-stands-alone',
      severity: 'error',
      from: { path: '^engine/' },
      to: { path: '^(electron|renderer|migrations|seeds|tests)/' },
    },
    {
      name: 'engine-is-pure',
      comment: 'The engine may use pure packages: nothing that touches a platform.',
      severity: 'error',
      from: { path: '^engine/' },
      to: {
        dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer'],
        pathNot: 'node_modules/(valibot|intl-messageformat|@stdlib|d3-array|papaparse)/',
      },
    },
    {
      name: 'renderer-knows-only-the-contract',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: '^electron/', pathNot: '^electron/contract/' },
    },
    {
      name: 'start-page-knows-only-the-engine',
      comment: 'It is bundled into one script that runs in any browser, without the window.',
      severity: 'error',
      from: { path: '^renderer/startPage/' },
      to: { path: '^(renderer|electron)/|node_modules/', pathNot: '^renderer/startPage/' },
    },
    {
      name: 'renderer-has-no-node',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'base-parts-know-no-state',
      severity: 'error',
      from: { path: '^renderer/base/' },
      to: { path: '^renderer/', pathNot: '^renderer/(base|pictures)/' },
    },
    {
      name: 'screens-do-not-import-each-other',
      comment: 'What two screens share lives in a room below them.',
      severity: 'error',
      from: { path: '^renderer/(agreement|compare|desk|firstStart|handover|letter|review|trainee)/' },
      to: {
        path: '^renderer/(agreement|compare|desk|firstStart|handover|letter|review|trainee)/',
        pathNot: '^renderer/$1/',
      },
    },
    {
      name: 'electron-does-not-import-screens',
      severity: 'error',
      from: { path: '^electron/' },
      to: { path: '^renderer/' },
    },
    {
      name: 'contract-is-types-and-schemas',
      severity: 'error',
      from: { path: '^electron/contract/' },
      to: { path: '^electron/', pathNot: '^electron/contract/' },
    },
    {
      name: 'backend-needs-no-window',
      severity: 'error',
      from: { path: '^electron/(backend|cli)/' },
      to: { path: 'node_modules/electron/|^electron/(main|preload|launch)/' },
    },
    {
      name: 'only-the-store-opens-sqlite',
      severity: 'error',
      from: { pathNot: '^(electron/backend/store|tests)/' },
      to: { path: 'node_modules/better-sqlite3/' },
    },
    {
      name: 'only-media-runs-ffmpeg',
      severity: 'error',
      from: { pathNot: '^(electron/backend/media|tests)/' },
      to: { path: 'node_modules/fluent-ffmpeg/' },
    },
    {
      name: 'product-does-not-import-tests',
      severity: 'error',
      from: { path: '^(engine|electron|renderer)/' },
      to: { path: '^tests/' },
    },
  ],
  options: {
    parser: 'swc',
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.mjs', '.cjs', '.js', '.json'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
};
