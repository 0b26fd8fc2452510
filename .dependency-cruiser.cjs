// The map of the house: a folder of core/ may import only folders that stand before it in this list.
const floors = [
  'units',
  'geometry',
  'picture',
  'garment',
  'diagram',
  'shaping',
  'blocks',
  'seams',
  'fit',
  'compare',
  'mockup',
  'cloth',
  'drawing',
  'paper',
  'screen',
  'files',
  'check',
];

const rooms = [
  'shelf',
  'wearer',
  'diagram',
  'draft',
  'reshape',
  'seams',
  'fit',
  'mockup',
  'versions',
  'compare',
  'cloth',
  'paper',
  'check',
];

const upward = floors.slice(0, -1).map((floor, index) => ({
  name: `core-${floor}-looks-up`,
  comment: `core/${floor} stands below ${floors.slice(index + 1).join(', ')}.`,
  severity: 'error',
  from: { path: `^core/${floor}/` },
  to: { path: `^core/(${floors.slice(index + 1).join('|')})/` },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    { name: 'circle', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'core-is-pure',
      comment: 'core/ knows nothing of the app, of React, of the screen or of storage.',
      severity: 'error',
      from: { path: '^core/' },
      to: { path: '^(app/|node_modules/(react|konva|dexie|zustand))' },
    },
    ...upward,
    {
      name: 'geometry-stands-alone',
      severity: 'error',
      from: { path: '^core/geometry/' },
      to: { path: '^core/', pathNot: '^core/geometry/' },
    },
    {
      name: 'rooms-keep-apart',
      comment: 'What two rooms share belongs to the table, the state or the core.',
      severity: 'error',
      from: { path: `^app/(${rooms.join('|')})/` },
      to: { path: `^app/(${rooms.join('|')})/`, pathNot: '^app/$1/' },
    },
    {
      name: 'state-knows-no-screen',
      severity: 'error',
      from: { path: '^app/(state|storage|workers)/' },
      to: { path: `^app/(${rooms.join('|')}|table|ui)/` },
    },
    {
      name: 'one-language-a-folder',
      comment: 'The rest of the app takes words from the files beside en/ and de/, which give whichever is spoken.',
      severity: 'error',
      from: { path: '^(app|core)/', pathNot: '^app/words/' },
      to: { path: '^app/words/(en|de)/' },
    },
    {
      name: 'languages-keep-apart',
      comment: 'A translation is read before the words it stands for; it may know their types only.',
      severity: 'error',
      from: { path: '^app/words/(en|de)/' },
      to: {
        path: '^app/words/',
        pathNot: '^app/words/($1/|language|written)',
        dependencyTypesNot: ['type-only', 'type-import'],
      },
    },
    { name: 'no-barrel', severity: 'error', from: {}, to: { path: '^(app|core)/.*index\\.tsx?$' } },
    { name: 'unresolved', severity: 'error', from: {}, to: { couldNotResolve: true, pathNot: '^virtual:' } },
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '\\.css$' },
  },
};
