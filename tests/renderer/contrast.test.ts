import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const css = readFileSync(path.join(import.meta.dirname, '../../renderer/style/scales.css'), 'utf8');

/** A colour of the page in one of its schemes. */
function colour(name: string, scheme: 'light' | 'dark'): string {
  const found = new RegExp(`--${name}: (?:light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)|(#[0-9a-f]{6}));`).exec(css);
  const [, light, dark, both] = found ?? [];
  const value = both ?? (scheme === 'light' ? light : dark);
  if (value === undefined) throw new Error(`There is no colour ${name}.`);
  return value;
}

/** Relative luminance (WCAG 2.2, definition of relative luminance). */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio (WCAG 2.2, definition of contrast ratio). */
function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

it('measures black on white as 21 and white on white as 1 (WCAG 2.2)', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
  expect(contrast('#ffffff', '#ffffff')).toBe(1);
});

describe.each(['light', 'dark'] as const)('the %s scheme', (scheme) => {
  // WCAG 2.2, success criterion 1.4.3: text 4.5 to 1.
  it.each([
    ['ink', 'paper'],
    ['ink', 'sheet'],
    ['ink', 'field'],
    ['ink', 'chalk-wash'],
    ['ink-soft', 'paper'],
    ['ink-soft', 'sheet'],
    ['ink-soft', 'field'],
    ['chalk-deep', 'paper'],
    ['chalk-deep', 'chalk-wash'],
    ['on-chalk', 'chalk'],
    ['stage-ink', 'stage'],
  ])('has %s legible on %s', (text, ground) => {
    expect(contrast(colour(text, scheme), colour(ground, scheme))).toBeGreaterThanOrEqual(4.5);
  });

  // WCAG 2.2, success criterion 1.4.11: what tells a control from its ground, 3 to 1.
  it.each([
    ['rule-strong', 'paper'],
    ['rule-strong', 'field'],
    ['chalk', 'paper'],
    ['chalk', 'field'],
  ])('has %s visible beside %s', (line, ground) => {
    expect(contrast(colour(line, scheme), colour(ground, scheme))).toBeGreaterThanOrEqual(3);
  });
});
