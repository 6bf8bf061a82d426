/* The arrows between the folders. A file may use what stands before its folder in this list, never after. */
const layers = [
  'quantity/',
  'station/',
  'catalog/',
  'fixes/',
  'circuit/',
  '(dc|rf)/',
  'keydown/',
  'trial/',
  'rules/',
  'survey\\.ts$',
  '(whatif|reports)/',
  'index\\.ts$',
];

const coreArrows = layers.slice(0, -1).map((layer, i) => ({
  name: `core-arrow-${layer.replace(/\W/g, '')}`,
  comment: 'core/ is a stack: results depend on the document, never the other way round',
  severity: 'error',
  from: { path: `^core/${layer}` },
  to: { path: layers.slice(i + 1).map((above) => `^core/${above}`) },
}));

const forbidden = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });

module.exports = {
  forbidden: [
    ...coreArrows,
    forbidden('no-cycles', 'two files that need each other are one file', {}, { circular: true }),
    forbidden('dc-and-rf-apart', 'the solvers do not see each other', { path: '^core/dc/' }, { path: '^core/rf/' }),
    forbidden('rf-and-dc-apart', 'the solvers do not see each other', { path: '^core/rf/' }, { path: '^core/dc/' }),
    forbidden(
      'core-is-pure',
      'core/ uses itself, zod and the JSON reader that knows places, nothing else',
      { path: '^core/' },
      { pathNot: ['^core/', '^node_modules/(zod|jsonc-parser)/'] },
    ),
    forbidden(
      'core-has-one-door',
      'renderer/ and electron/ use core/index.ts and the sample files',
      { path: '^(renderer|electron)/' },
      { path: '^core/', pathNot: ['^core/index\\.ts$', '^core/samples/'] },
    ),
    forbidden(
      'screen-meets-shell-in-the-bridge',
      'renderer/ and electron/ know only the types of renderer/shell/bridge.ts of each other',
      { path: '^electron/' },
      { path: '^renderer/', pathNot: '^renderer/shell/bridge\\.ts$' },
    ),
    forbidden(
      'bridge-is-types-only',
      'nothing of the bridge runs in the shell',
      { path: '^electron/' },
      { path: '^renderer/shell/bridge\\.ts$', dependencyTypesNot: ['type-only'] },
    ),
    forbidden(
      'screen-without-shell',
      'the screen runs in a browser too; only its build takes the page policy from where it is handed out',
      { path: '^renderer/', pathNot: '^renderer/vite\\.config\\.ts$' },
      { path: '^electron/' },
    ),
    forbidden(
      'screen-without-node',
      'the screen runs in a browser too',
      { path: '^renderer/', pathNot: '^renderer/vite\\.config\\.ts$' },
      { dependencyTypes: ['core'] },
    ),
    forbidden(
      'react-flow-stays-in-canvas',
      'the document and the other screens know nothing of the drawing library',
      { path: '^renderer/', pathNot: '^renderer/canvas/' },
      { path: '@xyflow' },
    ),
    forbidden(
      'start-needs-only-node',
      'set-up runs before any package is installed; only the build, which runs after it, uses one',
      { path: '^electron/start/', pathNot: '^electron/start/build\\.mjs$' },
      { path: 'node_modules' },
    ),
    forbidden(
      'product-without-tests',
      'what ships does not use what checks it',
      { path: '^(core|renderer|electron)/' },
      { path: '^(test|e2e)/' },
    ),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^dist/' },
    // Type imports count as arrows: a type that points the wrong way is a design that does.
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
};
