import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PainReading, readPainNote } from '../../../engine/pain/painNote.ts';
import { isOver, painStep } from '../../../engine/pain/painRule.ts';

const pain = (note: string): Extract<PainReading, { readonly kind: 'pain' }> => {
  const reading = readPainNote(note);
  if (reading.kind === 'none') throw new Error(`“${note}” was read as no pain`);
  return reading;
};
const areas = (note: string): string[] | 'all' => {
  const { areas: named } = pain(note);
  return named === 'all' ? 'all' : [...named].sort();
};

// What a coach understands by each of these notes.
describe('a note on pain', () => {
  it.each([
    ['Knee, 4/10', 4],
    ['a 6 out of ten in my elbow', 6],
    ['pain of about 7 in the hip', 7],
    ['Left knee 3-4 on the last set', 4],
    ['shoulder, between 3 and 5 of 10', 5],
    ['it was about a six', 6],
    ['Lower back 2 of 10', 2],
    ['6', 6],
    ['shoulder pain six out of ten', 6],
    ['Knie, 5 von 10', 5],
    ['Schulter etwa eine sieben', 7],
    ['Rücken 3–4 von 10 ab dem 3. Satz', 4],
    ['Schmerzstärke 8 im Ellbogen', 8],
    ['wrist 7/10, it was 4/10 on set 2', 7],
    ['Knee was 6/10 last week, 2/10 today', 2],
    ['no pain at rest but 5 under load', 5],
    ['Knee 4.5/10', 4.5],
  ])('states a level: %s', (note, level) => {
    expect(pain(note).level).toBe(level);
  });

  it.each([
    'The front of my left knee ached from the third set on.',
    'Elbow hurts since 3 weeks, from set 2 on, at 60 kg for 5 reps',
    'The left one is a bit sore',
    'Knie zwickt seit 2 Wochen im 3. Satz',
    'Sore after 5 minutes of warm-up',
  ])('states none: %s', (note) => {
    expect(pain(note).level).toBeNull();
    expect(painStep(readPainNote(note))).toBe('settle');
  });

  it.each([
    ['Left knee, 3/10', ['knee']],
    ['my low back is sore', ['lowerBack']],
    ['The back squat hurt my knee', ['knee']],
    ['Bench press: right shoulder 4/10', ['shoulder']],
    ['pain in my groin when squatting', ['groin']],
    ['Achilles tendon sore', ['ankle', 'calf']],
    ['hamstring tweak', ['hamstring']],
    ['my back aches', ['lowerBack', 'upperBack']],
    ['the pain came back in my wrist', ['wrist']],
    ['Knee 4/10, shoulder is fine', ['knee']],
    ['Schulter rechts, 3 von 10', ['shoulder']],
    ['unterer Rücken zieht', ['lowerBack']],
    ['Kniebeuge: Leiste zwickt', ['groin']],
    ['Die linke Hüfte schmerzt', ['hip']],
    ['Handgelenk tut weh', ['wrist']],
    ['Sprunggelenk 4/10', ['ankle']],
    ['Nacken verspannt', ['neck']],
  ])('names a part of the body: %s', (note, named) => {
    expect(areas(note)).toEqual(named);
  });

  it.each(['It hurt, 4/10', 'Felt something odd after set 2', 'Ziemlich unangenehm heute', '5/10 in the squat'])(
    'may be of anywhere where it names nothing known: %s',
    (note) => {
      expect(areas(note)).toBe('all');
    },
  );

  it.each([
    '',
    '   ',
    'No pain',
    'none',
    'pain free',
    'Pain-free today.',
    'no pain, numbness or tingling',
    'All good!',
    'Knee was fine today',
    'Nothing hurts',
    'shoulder did not hurt at all',
    'My back felt great',
    '0/10',
    'no knee pain',
    "It didn't hurt.",
    'keine Schmerzen',
    'schmerzfrei',
    'Knie tut nicht mehr weh',
    'Alles gut',
    'ohne Beschwerden',
    'Nichts tut weh.',
    'Rücken war in Ordnung',
    'the knee pain is gone',
    'Torn meniscus five years ago, the knee is fine now.',
    'My old shoulder injury is fine now',
    'I hurt my back last year. No pain since.',
    'Meniskus vor fünf Jahren gerissen, Knie ist jetzt wieder gut',
    'Alte Schulterverletzung, keine Schmerzen',
    'Handgelenk gebrochen vor 3 Jahren, merke nichts mehr',
    "Broke my wrist years ago, it doesn't bother me any more",
    'Das Knie stört nicht mehr',
  ])('can say that nothing hurts: “%s”', (note) => {
    expect(readPainNote(note)).toEqual({ kind: 'none' });
  });

  it.each([
    'no pain at rest but 5 under load',
    'no pain at rest',
    "can't squat without pain",
    'knee was fine until the last set',
    'not pain free yet',
    'No change in the pain',
    'No pain in the shoulder, but the knee is 3/10',
    'fine at first, then my elbow began to ache',
    'Pain? Yes, knee.',
    'no better than last week',
    'In Ruhe keine Schmerzen, unter Last 4',
    'Ohne Schmerzen ging keine Wiederholung',
    'no numbness, just an ache',
    'not okay',
    'no pain unless I go deep',
    'Torn meniscus five years ago',
    'Old shoulder injury, the knee is fine now',
    'Tore my knee last year, the other knee is fine',
    'Old knee injury hurts again, otherwise all good',
    'Broke my wrist years ago, fine until the last set',
    'Old back injury, felt fine, 2/10 today',
    'Merke nichts mehr im linken Fuß',
    "The knee doesn't bother me until I squat deep",
    "It doesn't bother me in the warm-up, but it aches after",
    'Torn meniscus five years ago, the knee is fine now, but it swells',
  ])('is pain when it does not deny all of it: %s', (note) => {
    expect(readPainNote(note).kind).toBe('pain');
  });
});

describe('what pain asks for', () => {
  it.each([
    'Knee 3/10',
    'knee sore',
    'Shoulder 5/10',
    'elbow, 4 of 10, no numbness or tingling',
    'Knee 3/10, worse at the bottom',
    'knee 3/10, not getting worse',
    'Hip from 5 to 3',
    'Knie 4 von 10, nicht schlimmer als letzte Woche',
  ])('is to let it settle: %s', (note) => {
    expect(painStep(readPainNote(note))).toBe('settle');
  });

  it.each([
    ['Knee 6/10', 'level'],
    ['Knee 2/10 but getting worse each set', 'rising'],
    ['went from 3 to 6 over the sets', 'rising'],
    ['Rücken 4/10, wird von Satz zu Satz schlimmer', 'rising'],
    ['Knie 3, Tendenz steigend', 'rising'],
    ['elbow 3/10 with tingling in two fingers', 'nerve'],
    ['low back 2/10, my left foot was numb', 'nerve'],
    ['sharp shooting pain down the leg', 'nerve'],
    ['pins and needles in the hand', 'nerve'],
    ['Der Schmerz strahlt ins Bein aus', 'nerve'],
    ['Kribbeln in den Fingern', 'nerve'],
    ['Daumen taub', 'nerve'],
    ['leg felt weak after deadlifts', 'nerve'],
    ['knee is swollen', 'flag'],
    ['shoulder wakes me at night', 'flag'],
    ['something popped in my shoulder', 'flag'],
    ['Knie geschwollen', 'flag'],
    ['chest pain in the last set', 'emergency'],
    ['Druck auf der Brust beim Bankdrücken', 'emergency'],
    ['nearly fainted', 'emergency'],
  ])('is to stop and see a clinician: %s', (note, sign) => {
    const reading = pain(note);
    expect(painStep(reading)).toBe('stop');
    expect(reading.rising).toBe(sign === 'rising');
    expect(reading.nerveSigns).toBe(sign === 'nerve');
    expect(reading.redFlag).toBe({ flag: 'soon', emergency: 'emergency' }[sign] ?? 'none');
  });

  it.each([
    ['My right knee felt a bit stiff in the warm-up, about 2 out of 10. It was gone before the working sets.', true],
    ['Knee 2/10 in the warm-up, then it went away', true],
    ['Knee 2/10, not gone yet', false],
    ['Knee 4/10, gone by the evening', false],
    ['Knee 2/10, gone after the warm-up but it came back', false],
    ['Knie 2 von 10, nach dem Aufwärmen wieder weg', true],
  ])('is nothing where it was mild and gone again: %s', (note, over) => {
    expect(isOver(readPainNote(note))).toBe(over);
  });

  it('is never less for a sign more', () => {
    const order = ['none', 'settle', 'stop'];
    const notes = fc.constantFrom('Knee 4/10', 'no pain', 'my back aches', 'Schulter 2 von 10');
    const signs = fc.constantFrom(
      'My foot is numb.',
      'It is getting worse.',
      '8/10 now.',
      'The joint is swollen.',
      'Kribbeln im Arm.',
    );
    fc.assert(
      fc.property(notes, signs, (note, sign) => {
        const rank = (words: string) => order.indexOf(painStep(readPainNote(words)));
        expect(rank(`${note}. ${sign}`)).toBe(2);
        expect(rank(`${note}. ${sign}`)).toBeGreaterThanOrEqual(rank(note));
      }),
    );
  });

  it('reads any words without fail', () => {
    fc.assert(fc.property(fc.string({ maxLength: 300, unit: 'grapheme' }), (note) => void readPainNote(note)));
  });
});
