import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import { expect, it } from 'vitest';
import { wholeSbom } from '../../../electron/notices/sbom.ts';

const root = path.resolve(import.meta.dirname, '../../..');

// What the schema of CycloneDX 1.6 requires of the parts that are used, and what it allows them to be.
const text = v.pipe(v.string(), v.minLength(1));
const componentSchema = v.object({
  type: v.picklist(['application', 'framework', 'library', 'platform', 'file', 'machine-learning-model', 'data']),
  name: text,
  'bom-ref': text,
  scope: v.optional(v.picklist(['required', 'optional', 'excluded'])),
  hashes: v.optional(v.array(v.object({ alg: text, content: v.pipe(v.string(), v.regex(/^([0-9a-f]{32}){1,4}$/)) }))),
  licenses: v.optional(
    v.array(
      v.union([
        v.strictObject({ license: v.union([v.object({ id: text }), v.object({ name: text })]) }),
        v.strictObject({ expression: text }),
      ]),
    ),
  ),
});
const bomSchema = v.strictObject({
  $schema: v.literal('http://cyclonedx.org/schema/bom-1.6.schema.json'),
  bomFormat: v.literal('CycloneDX'),
  specVersion: v.literal('1.6'),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  metadata: v.looseObject({ component: componentSchema }),
  components: v.array(componentSchema),
  dependencies: v.array(v.object({ ref: text, dependsOn: v.optional(v.array(text)) })),
});

/** As `npm sbom` writes it, of three packages. */
const listed = JSON.stringify({
  bomFormat: 'CycloneDX',
  specVersion: '1.5',
  serialNumber: 'urn:uuid:8ca41036-a19b-46d4-ae97-2714e955ced0',
  metadata: {
    timestamp: '2026-11-30T23:19:40.903Z',
    component: { 'bom-ref': 'rackside@0.1.0', type: 'library', name: 'x' },
  },
  components: [
    {
      'bom-ref': 'yazl@3.3.1',
      type: 'library',
      name: 'yazl',
      scope: 'required',
      licenses: [{ license: { id: 'MIT' } }],
    },
  ],
  dependencies: [
    { ref: 'rackside@0.1.0', dependsOn: ['yazl@3.3.1'] },
    { ref: 'yazl@3.3.1', dependsOn: [] },
  ],
});

it('the bill of materials is CycloneDX 1.6 with programs, networks and runtime, and nothing of the day', () => {
  const whole = wholeSbom(listed, root);
  const bom = v.parse(bomSchema, whole);
  const names = bom.components.map(({ name }) => name);
  expect(names).toEqual(expect.arrayContaining(['yazl', 'ffmpeg', 'ffprobe', 'movenet-thunder', 'movenet-multipose']));
  const refs = bom.components.map((one) => one['bom-ref']);
  expect(new Set(refs).size).toBe(refs.length);
  const ofApp = bom.dependencies.find(({ ref }) => ref === 'rackside@0.1.0')?.dependsOn ?? [];
  expect(ofApp.filter((ref) => !refs.includes(ref))).toEqual([]);
  expect(ofApp).toContain('network:movenet-thunder');
  expect(JSON.stringify(whole)).not.toMatch(/timestamp|serialNumber/);
  const real = path.join(root, 'dist/rackside.cdx.json');
  if (existsSync(real)) v.parse(bomSchema, JSON.parse(readFileSync(real, 'utf8')));
});
