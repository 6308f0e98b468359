/**
 * The layer rule: renderer -> contract + engine; electron -> engine; engine -> nothing of ours; no cycles, of files or of
 * folders. Inside a layer, rooms stand on floors: a room imports from its own floor and those below it.
 */
const floors = {
  engine: [
    ['time', 'language', 'message'],
    ['review', 'recording', 'covers', 'exercises', 'rubric'],
    ['names', 'arrival'],
    ['programme', 'grading', 'progress', 'agreement', 'motion', 'pain', 'cautions'],
    ['wording'],
    ['document'],
    ['letter', 'sheet', 'notes', 'breakdown', 'film', 'calendar', 'annotation'],
    ['edition'],
    ['handover'],
  ],
  'electron/backend': [
    ['files'],
    ['store'],
    ['catalogue', 'lettering', 'media', 'log'],
    ['context', 'summaries'],
    ['documents', 'measure', 'reviews'],
    ['report', 'handover', 'arrivals'],
    ['jobs'],
    ['handlers'],
  ],
  renderer: [
    ['words'],
    ['base'],
    ['bridge'],
    ['state'],
    ['drafts', 'grade', 'shared', 'importing'],
    ['commands', 'player'],
    [
      'firstStart',
      'desk',
      'review',
      'letter',
      'handover',
      'compare',
      'agreement',
      'trainee',
      'trainees',
      'bin',
      'inbox',
    ],
  ],
};

/** One rule a floor: nothing of it imports from a floor above. */
const floorRules = Object.entries(floors).flatMap(([layer, rooms]) =>
  rooms.slice(0, -1).map((floor, index) => ({
    name: `${layer.replace('electron/', '')}-floor-${index + 1}`,
    comment: `${floor.join(', ')}: below ${rooms
      .slice(index + 1)
      .flat()
      .join(', ')}`,
    severity: 'error',
    from: { path: `^${layer}/(${floor.join('|')})/` },
    to: {
      path: `^${layer}/(${rooms
        .slice(index + 1)
        .flat()
        .join('|')})/`,
    },
  })),
);

module.exports = {
  forbidden: [
    ...floorRules,
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'no-folder-cycles',
      severity: 'error',
      scope: 'folder',
      from: { path: '^(engine|electron|renderer)' },
      to: { circular: true },
    },
    {
      name: 'no-barrels',
      comment: 'An import names the file that declares: one rule for all.',
      severity: 'error',
      from: {},
      to: { path: '^(engine|electron|renderer)/.*/index\\.tsx?$' },
    },
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
      to: { path: '^renderer/', pathNot: '^renderer/(base|pictures|words)/' },
    },
    {
      name: 'screens-do-not-import-each-other',
      comment: 'What two screens share lives in a room below them.',
      severity: 'error',
      from: {
        path: '^renderer/(agreement|bin|compare|desk|firstStart|handover|inbox|letter|review|trainee|trainees)/',
      },
      to: {
        path: '^renderer/(agreement|bin|compare|desk|firstStart|handover|inbox|letter|review|trainee|trainees)/',
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
