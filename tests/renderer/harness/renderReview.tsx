import { type RenderResult, render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { ReviewDeskProvider } from '../../../renderer/review/commands/ReviewDeskProvider.tsx';
import type { ReviewBench } from './reviewBench.ts';

/** Renders a part of the review screen with the context of a bench. */
export const renderReview = ({ desk }: ReviewBench, part: ReactNode): RenderResult =>
  render(<ReviewDeskProvider desk={desk}>{part}</ReviewDeskProvider>);
