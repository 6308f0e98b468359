import { describe, expect, it } from 'vitest';
import type { Fault } from '../../engine/exercises/exercise.ts';
import { shipped } from './shippedCatalogue.ts';

const faults = shipped.exercises.flatMap((exercise) =>
  exercise.faults.map((fault) => ({ place: `${exercise.id} ${fault.id}`, fault })),
);
const words = (text: string): number => text.trim().split(/\s+/).length;
const sentences: readonly (keyof Fault)[] = ['why', 'drill', 'proof'];

/** Names of causes, fear and promises: none of them is a coach's to write. */
const banned = [
  /diagnos/i,
  /injur/i,
  /damag/i,
  /danger/i,
  /herni/i,
  /\bdiscs? (slip|bulg)/i,
  /\bslipped/i,
  /\btear(s|ing)?\b/i,
  /\bwreck/i,
  /\bruin/i,
  /\bdestroy/i,
  /\bhurt/i,
  /\bharm/i,
  /\brisk/i,
  /\bpain(s|ful)?\b/i,
  /guarantee/i,
  /\bpromise/i,
  /\bprevents?\b/i,
  /\bcures?\b/i,
  /\bheals?\b/i,
  /\bwill (grow|fix|make you)/i,
  /\b(fat|skinny|ugly|lazy)\b/i,
];

/** Letter by letter the texts must be a reader's: no double spaces, no stray ends, no leftover markup. */
const untidy = /\s\s|^\s|\s$|\s[.,;]|[{}<>\\]|\.\./;

describe('the words of the faults', () => {
  it('keep outcome cues to eight words and body cues to ten', () => {
    const long = faults.filter(({ fault }) => words(fault.cue.outcome) > 8 || words(fault.cue.body) > 10);
    expect(long.map(({ place }) => place)).toEqual([]);
  });

  it('write cues as orders without a full stop', () => {
    const wrong = faults.filter(({ fault }) =>
      [fault.cue.outcome, fault.cue.body].some((cue) => !/^[A-Z1-9].*[^.!?;,]$/.test(cue)),
    );
    expect(wrong.map(({ place }) => place)).toEqual([]);
  });

  it('write why, drill and proof as one sentence each', () => {
    const wrong = faults.flatMap(({ place, fault }) =>
      sentences
        .filter((field) => !/^[A-Z][^.!?]*(\d\.\d[^.!?]*)*\.$/.test(String(fault[field])))
        .map((f) => `${place} ${f}`),
    );
    expect(wrong).toEqual([]);
  });

  it('write what is seen so that it reads on after "the film shows"', () => {
    const wrong = faults.filter(({ fault }) => !/^(the|a|an|no|one|both|rests)\b[^.!?]*$/.test(fault.seen));
    expect(wrong.map(({ place, fault }) => `${place}: ${fault.seen}`)).toEqual([]);
  });

  it('name authors, year and journal for every why that is more than common practice', () => {
    const cited = /^[A-ZÀ-Ž][^,\d]*(, [^,\d]+)* \d{4}, [A-Z][A-Za-z ]+/;
    const wrong = faults.filter(({ fault }) => fault.source !== 'common practice' && !cited.test(fault.source));
    expect(wrong.map(({ place, fault }) => `${place}: ${fault.source}`)).toEqual([]);
  });

  it('say how the next clip will show it, as something to count or measure', () => {
    const countable = /\d|every|each|same|both|no pause|shortest|one|within|last|from the front|stays?|shows?|gets/i;
    expect(faults.filter(({ fault }) => !countable.test(fault.proof)).map(({ place }) => place)).toEqual([]);
  });

  it('name no causes, raise no fear and promise nothing', () => {
    const found = faults.flatMap(({ place, fault }) => {
      const text = [fault.name, fault.seen, fault.why, fault.cue.outcome, fault.cue.body, fault.drill, fault.proof];
      return banned.filter((word) => word.test(text.join(' '))).map((word) => `${place}: ${word}`);
    });
    expect(found).toEqual([]);
  });

  it('are tidy', () => {
    const found = faults.filter(({ fault }) =>
      [fault.name, fault.seen, fault.why, fault.source, fault.drill, fault.proof].some((text) => untidy.test(text)),
    );
    expect(found.map(({ place }) => place)).toEqual([]);
  });

  it('propose to stop only where nobody steers the load, something could give way, or nothing would catch it', () => {
    const stops = new Set(faults.filter(({ fault }) => fault.usualSeverity === 'stop').map(({ fault }) => fault.id));
    const unsafe = [
      'controlLost',
      'discNotSecured',
      'failedRepNotCaught',
      'gripLost',
      'hangNotSecure',
      'improvisedEquipment',
      'noSpotterOrArms',
      'safetyArmsMissing',
      'stopsNotSet',
      'supportNotSecure',
    ];
    expect([...stops].filter((id) => !unsafe.includes(id))).toEqual([]);
  });
});
