import { Option } from 'commander';
import { nameModes } from '../../engine/names/shownName.ts';

/** How the trainee is named in what a command writes; `usual` says how it is without it. */
export function namesOption(usual: string): Option {
  return new Option('--names <mode>', `how the trainee is named in all of it (default: ${usual})`).choices(nameModes);
}
