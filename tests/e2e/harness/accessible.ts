import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { App } from './app.ts';
import type { Report } from './report.ts';

type Finding = { readonly id: string; readonly impact: string; readonly targets: readonly string[] };

/** The script of a general accessibility checker. */
export const checkerSource = (): Promise<string> =>
  readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The screen as it is now through the checker: nothing serious, nothing critical. */
export function checkScreen(app: App, report: Report, source: string, name: string): Promise<void> {
  return report.check(`${name}: nothing serious or critical`, async () => {
    await app.page.evaluate(source);
    const findings = await app.page.evaluate(findingsInPage);
    const grave = findings.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    assert.deepEqual(grave, []);
  });
}

/** Runs in a page that has the checker: what it finds there. */
export async function findingsInPage(): Promise<Finding[]> {
  const axe = Reflect.get(window, 'axe') as {
    run: (root: Document, options: object) => Promise<{ violations: AxeViolation[] }>;
  };
  type AxeViolation = { id: string; impact: string | null; nodes: { target: unknown[] }[] };
  const { violations } = await axe.run(document, { iframes: false });
  return violations.map(({ id, impact, nodes }) => ({
    id,
    impact: impact ?? '',
    targets: nodes.slice(0, 4).map(({ target }) => target.join(' ')),
  }));
}
