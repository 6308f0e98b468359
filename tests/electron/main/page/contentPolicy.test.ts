import { expect, test } from 'vitest';
import { documentPolicy, pagePolicy } from '../../../../electron/main/page/contentPolicy.ts';

const rules = (policy: string) => new Map(policy.split('; ').map((rule) => [rule.split(' ')[0], rule] as const));

test('the page may load nothing from elsewhere and run nothing inline', () => {
  expect(pagePolicy).not.toMatch(/unsafe|\*|https?:|data:|filesystem:/);
  expect(rules(pagePolicy).get('default-src')).toBe("default-src 'none'");
});

// Directives that do not fall back to default-src, so that each must be written (W3C Content Security Policy 3, section 6).
test.each(['base-uri', 'form-action', 'frame-ancestors'])('%s is closed in the page', (name) => {
  expect(rules(pagePolicy).get(name)).toBe(`${name} 'none'`);
});

test('a shown document can run nothing and reach nothing', () => {
  expect(rules(documentPolicy).has('sandbox')).toBe(true);
  expect(rules(documentPolicy).get('sandbox')).toBe('sandbox');
  expect(rules(documentPolicy).has('script-src')).toBe(false);
  expect(rules(documentPolicy).get('default-src')).toBe("default-src 'none'");
});
