/** Words that carry no content of their own, English and German. */
const small = new Set(
  'a an and are as at be been but by for from had has have he her his i in into is it its more most my no not of off on or our out over own she so some still than that the their them then there they this to too under up very was we were what when where which while with you your also aber als am an auf aus bei bis da das dass dein deine dem den der des die du ein eine einem einen einer es etwas für hat ich ihr im in ist kein keine man mehr mein mit nach nicht noch nur ob oder schon sehr sein sich sie sind so und vom von vor war wie wird zu zum zur'.split(
    ' ',
  ),
);

/** A word without its ending: "rounding", "rounds" and "rounded" are one. */
const stem = (word: string): string =>
  word.length < 5 ? word : word.replace(/(?:ing|ings|edly|ed|es|s|ly|er|en|em|e|t|te|ten)$/u, '');

const contentOf = (words: string): ReadonlySet<string> =>
  new Set((words.toLowerCase().match(/[\p{L}\d]+/gu) ?? []).filter((word) => !small.has(word)).map(stem));

/** Share of content words that has to be in common. */
const enough = 0.6;

function inCommon(one: string, other: string) {
  const [a, b] = [contentOf(one), contentOf(other)];
  return { a: a.size, b: b.size, both: [...a].filter((word) => b.has(word)).length };
}

/** Whether the shorter of two sentences says little that the longer does not: most of its content words stand there. */
export function addsLittle(one: string, other: string): boolean {
  const { a, b, both } = inCommon(one, other);
  const fewer = Math.min(a, b);
  return fewer > 1 && both / fewer >= enough;
}

/** Whether two sentences say about the same: most content words of both are in common. */
export function nearlySame(one: string, other: string): boolean {
  const { a, b, both } = inCommon(one, other);
  return Math.min(a, b) > 1 && (2 * both) / (a + b) >= enough;
}
