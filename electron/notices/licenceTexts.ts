import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import type { ProductionPackage } from './productionPackages.ts';

const licenceFile = /^(licen[sc]e|copying|notice)/i;

/**
 * The licence of a package as its folder holds it; where it holds none, the licence's own text with the author's name. Empty
 * for a package of some systems, whose text is that of the package that brings it, so that every system says the same.
 */
export function licenceTextOf(appFolder: string, one: ProductionPackage): string {
  if (one.isForSomeSystems) return '';
  const folder = path.join(appFolder, one.folder);
  const files = existsSync(folder)
    ? readdirSync(folder)
        .filter((file) => licenceFile.test(file))
        .sort()
    : [];
  const texts = files.map((file) => tidy(readFileSync(path.join(folder, file), 'utf8')));
  return texts.length > 0 ? texts.join('\n\n') : ownText(folder, one);
}

const packageSchema = v.object({
  author: v.optional(v.union([v.string(), v.object({ name: v.string() })]), ''),
});

function ownText(folder: string, { name, licence }: ProductionPackage): string {
  const { author } = v.parse(packageSchema, JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')));
  const written = typeof author === 'string' ? author.replace(/ *<.*/, '') : author.name;
  return `Copyright (c) ${written === '' ? `the authors of ${name}` : written}\n\n${standardText(licence)}`;
}

/** Files of the licences whose text is kept here. */
const standard: Readonly<Record<string, string>> = {
  MIT: 'MIT.txt',
  'Apache-2.0': 'Apache-2.0.txt',
  'GPL-3.0-or-later': 'GPL-3.0.txt',
  'LGPL-2.1-or-later': 'LGPL-2.1.txt',
};

/** The text of a licence that is kept here. Throws for others. */
export function standardText(licence: string): string {
  const file = standard[licence];
  if (file === undefined) throw new Error(`No text of ${licence} in electron/notices/texts`);
  return tidy(readFileSync(path.join(import.meta.dirname, 'texts', file), 'utf8'));
}

/** Without the marks and line ends that editors of one system leave. */
const tidy = (text: string): string =>
  text
    .replace(/^\uFEFF/, '')
    .replace(/\r\n?/g, '\n')
    .split('\n')
    .map((line) => line.trimEnd())
    .join('\n')
    .trim();
