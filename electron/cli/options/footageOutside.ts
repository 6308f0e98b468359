import { Option } from 'commander';

/** Whether footage is read too that a review file names outside its own folder; without it, the command refuses. */
export type FootageOutside = true | undefined;

/** `--footage-outside`. */
export function footageOutsideOption(): Option {
  return new Option('--footage-outside', 'read footage too that the review file names outside its own folder');
}
