import type { Writing } from './scripts.ts';

/** What is written together with a name, folded: letters of the same word before and after it. */
export type Attached = { readonly before: string; readonly after: string };

const names = '씨|님|군|양|형|누나|언니|오빠|선수|코치|선생님?|회원님?|쌤';
const particles =
  '의|은|는|이|가|을|를|와|과|도|만|에게서?|한테서?|께서?|이?랑|하고|처럼|보다|부터|까지|으로|로|이?라고|이?라서|이?라|이?나|이?네|이?다|이?고|이?든지|이?여|아|야|들|마저|조차|밖에|에서?|입니다|인데|인|였다|요';
const hangul = new RegExp(`^이?(?:${names})*(?:${particles})*$`, 'u');
const hangulTitle = new RegExp(`^(?:${names})+(?:${particles})*$`, 'u');
const arabicBefore = /^[وف]?(?:[بكل]?ال|لل|[بكلس])?$/u;
const hebrewBefore = /^[והבלמשכ]{1,3}$/u;
const indicAfter =
  /^(?:ने|नी|को|का|की|के|से|में|पर|जी|तक|ला|चा|ची|चे|च्या|शी|हून|ले|लाई|मा|सँग|র|কে|এর|ের|রা|তে|ની|ને|નું|નો|ના|એ|માં)$/u;

/** Endings of cases and pet forms in languages with Latin letters; English words end otherwise. */
const latinEndings = new Set([
  ...['ens', 'ns', 'sche', 'schen', 'scher', 'sches', 'chen', 'lein', 'le', 'erl', 'i', 'y', 'ie', 'o', 'ito', 'ita'],
  ...['a', 'e', 'u', 'em', 'om', 'owi', 'ovi', 'iem', 'ami', 'ow', 'ou', 'ej', 'ova', 'ka', 'ek', 'in', 'un'],
  ...['nin', 'nun', 'yi', 'yu', 'ya', 'ye', 'da', 'de', 'dan', 'den', 'la', 'yla', 'ei', 'ului', 'lui'],
  ...[
    'n',
    'lla',
    'lle',
    'lta',
    'ssa',
    'sta',
    'na',
    'ksi',
    'nak',
    'nek',
    'val',
    'vel',
    't',
    'at',
    'et',
    'ot',
    'on',
    'en',
  ],
  ...[
    'hoz',
    'hez',
    'nal',
    'nel',
    'tol',
    'rol',
    'ra',
    're',
    'ert',
    'ban',
    'ben',
    'ba',
    'be',
    'ig',
    'ak',
    'is',
    'us',
    'um',
    'ae',
  ],
]);

/** How surely a name ends where a form of it does, by what is attached: null = this is another word. */
export function endsHere(
  writing: Writing,
  form: string,
  { before, after }: Attached,
  looks: 'name' | 'word',
): 'surely' | 'maybe' | null {
  if (before === '' && after === '') return 'surely';
  const few = (most: number): boolean => before.length + after.length <= most;
  switch (writing) {
    case 'latin':
      if (before !== '') return null;
      if (after === 's') return 'surely';
      return looks === 'name' && form.length >= 3 && latinEndings.has(after) ? 'maybe' : null;
    case 'cyrillic':
    case 'greek':
      return before === '' && few(4) && form.length >= 3 ? 'maybe' : null;
    case 'arabic':
      if (after === '' && arabicBefore.test(before)) return form.length >= 3 ? 'surely' : 'maybe';
      return form.length >= 3 && few(4) ? 'maybe' : null;
    case 'hebrew':
      if (after === '' && hebrewBefore.test(before)) return form.length >= 3 ? 'surely' : 'maybe';
      return form.length >= 3 && few(3) ? 'maybe' : null;
    case 'hangul':
      if (form.length < 2) return before === '' && hangulTitle.test(after) ? 'maybe' : null;
      if (before === '' && hangul.test(after)) return 'surely';
      return few(6) ? 'maybe' : null;
    default:
      if (before === '' && indicAfter.test(after)) return 'surely';
      return form.length >= 3 && few(5) ? 'maybe' : null;
  }
}

/** Beginnings of a name that its other cases share, folded: "анн" of "анна", "павл" of "павел". */
export function stemsOf(writing: Writing, form: string): readonly string[] {
  const bare = writing === 'greek' ? form.replace(/[σν]$/u, '') : form;
  if (!(writing === 'latin' || writing === 'cyrillic' || writing === 'greek')) return [];
  const vowel = { latin: /a$/u, cyrillic: /[аяоеиыьуюэ]$/u, greek: /[αεηιουω]$/u }[writing];
  const stems = [bare.replace(vowel, '')];
  if (writing === 'cyrillic')
    stems.push(form.replace(/[ео](?=[бвгджзклмнпрстфхцчшщ]$)/u, ''), form.replace(/е(?=.$)/u, 'ь'));
  return [...new Set(stems)].filter((stem) => stem !== form && stem.length >= (writing === 'cyrillic' ? 2 : 3));
}

const stemEndings = {
  latin: /^(?:y|i|ie|e|u|o|ou|ei|ka|ek|ja|je)$/u,
  cyrillic: /^[а-яіїє]{0,4}$/u,
  greek: /^[α-ω]{0,4}$/u,
} as const;

/** Whether what follows a stem makes another case of the name of it. */
export function isCaseOf(writing: Writing, stem: string, { before, after }: Attached): boolean {
  if (before !== '' || !(writing === 'latin' || writing === 'cyrillic' || writing === 'greek')) return false;
  return stemEndings[writing].test(after) && (stem.length > 2 || after.length <= 2);
}

const honorificAfter =
  /^(?:さん|さま|様|君|くん|ちゃん|氏|先生|先輩|選手|教练|教練|老师|老師|先生|女士|小姐|哥|姐|弟|妹|同学|同學)/u;
const honorificBefore = /(?:小|老|阿|大|คุณ|น้อง|พี่|ครู|โค้ช)$/u;

/** Whether a name among words without spaces is addressed as one. */
export const isAddressed = (before: string, after: string): boolean =>
  honorificAfter.test(after) || honorificBefore.test(before);
