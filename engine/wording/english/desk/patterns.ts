/** The movement patterns of the shipped exercises, by their names there, as headings of a list. */
export const patterns = {
  'anti-rotation press': 'Anti-rotation press',
  'calf raise': 'Calf raise',
  'chest fly': 'Chest fly',
  curl: 'Curl',
  'elbow extension': 'Elbow extension',
  hinge: 'Hinge',
  'hip extension': 'Hip extension',
  hold: 'Hold',
  'horizontal press': 'Horizontal press',
  'horizontal row': 'Horizontal row',
  'knee extension': 'Knee extension',
  'knee flexion': 'Knee flexion',
  'lateral raise': 'Lateral raise',
  lunge: 'Lunge',
  'olympic lift': 'Olympic lift',
  'rear shoulder pull': 'Rear shoulder pull',
  'sled press': 'Leg press',
  squat: 'Squat',
  trunk: 'Trunk',
  'vertical press': 'Vertical press',
  'vertical pull': 'Vertical pull',
} as const;

export type PatternMessageId = keyof typeof patterns;
