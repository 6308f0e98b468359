/** Name and version of how joints are looked for; changes whenever the same footage would give other places. */
export const jointMethod = 'movenet-thunder/2';
