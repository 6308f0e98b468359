import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parseSync } from '@swc/core';
import { expect, test } from 'vitest';

const folder = path.resolve(import.meta.dirname, '../../../renderer');

/** Attributes that people read or hear; those of our own parts among them. */
const saying = new Set([
  ...['title', 'alt', 'placeholder', 'label', 'words', 'name', 'hint', 'legend'],
  ...['aria-label', 'aria-description', 'aria-roledescription', 'aria-valuetext'],
]);

/** Names that are the same in every language. */
const sameEverywhere = new Set(['Rackside']);

const isWords = (text: string): boolean => /\p{L}{2,}/u.test(text) && !sameEverywhere.has(text.trim());

type Node = { readonly type: string } & Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;

const within = (node: object): readonly unknown[] =>
  Object.values(node).flatMap((value: unknown) => (Array.isArray(value) ? value : [value]));

/** The words in an expression whose value is shown: strings, templates, either end of a choice. */
function shownWords(node: unknown): string[] {
  if (!isNode(node)) return [];
  switch (node.type) {
    case 'StringLiteral':
      return [String(node.value)];
    case 'TemplateLiteral':
      return (node.quasis as { readonly raw: string }[]).map(({ raw }) => raw);
    case 'ConditionalExpression':
      return [...shownWords(node.consequent), ...shownWords(node.alternate)];
    case 'BinaryExpression':
      return node.operator === '===' || node.operator === '!=='
        ? []
        : [...shownWords(node.left), ...shownWords(node.right)];
    case 'ParenthesisExpression':
    case 'JSXExpressionContainer':
      return shownWords(node.expression);
    default:
      return [];
  }
}

/** The words that a part of the page says itself instead of asking the wording for them. */
function ownWords(node: object): string[] {
  const here: string[] = [];
  let inner = within(node);
  if (isNode(node)) {
    if (node.type === 'JSXText') here.push(String(node.value));
    if (node.type === 'JSXAttribute') {
      const name = (node.name as { readonly value?: string }).value ?? '';
      if (saying.has(name)) here.push(...shownWords(node.value));
      // What stands in other attributes is for the machine; parts inside them are not.
      inner = isNode(node.value) && node.value.type === 'StringLiteral' ? [] : [node.value];
    }
    if (node.type === 'JSXElement' || node.type === 'JSXFragment') {
      for (const child of node.children as unknown[]) {
        if (isNode(child) && child.type === 'JSXExpressionContainer') here.push(...shownWords(child));
      }
    }
  }
  return [...here, ...inner.flatMap((one) => (typeof one === 'object' && one !== null ? ownWords(one) : []))];
}

const parts = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.tsx'))
  .sort();

test.each(parts)('%s holds no words of its own: all stand in the wording, in every language', (part) => {
  const code = readFileSync(path.join(folder, part), 'utf8');
  const tree = parseSync(code, { syntax: 'typescript', tsx: true });
  expect(ownWords(tree).filter(isWords)).toEqual([]);
});
