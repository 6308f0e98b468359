import { randomUUID } from 'node:crypto';
import type { ClipFacts } from '../../../engine/review/review.ts';
import type { ClipProbe } from '../media/probe/probeClip.ts';
import type { FootageRow } from '../store/footage.ts';

/** The row of newly probed footage; its files are named after its content. */
export function footageRow(probe: ClipProbe, sha256: string, extension: string, pictures: number): FootageRow {
  return {
    ...factColumns({ ...probe.facts, sha256 }),
    file: `${sha256}${extension}`,
    size_bytes: probe.sizeBytes,
    container: probe.container,
    shown_width: probe.shown.width,
    shown_height: probe.shown.height,
    constant_rate: probe.constantRate ? 1 : 0,
    mean_fps: probe.meanFps,
    capture_fps: probe.captureFps,
    real_time_factor: probe.realTimeFactor,
    has_audio: probe.hasAudio ? 1 : 0,
    plays: probe.plays,
    proxy_reason: probe.proxyReason,
    poster_file: `${sha256}-poster.jpg`,
    filmstrip_file: `${sha256}-filmstrip.jpg`,
    filmstrip_pictures: pictures,
  };
}

/** The row of footage that is elsewhere: its facts are known, its file and frame times are not. */
export function factsOnlyRow(facts: ClipFacts): FootageRow {
  return factColumns(facts);
}

function factColumns(facts: ClipFacts): FootageRow {
  const sideways = facts.rotationDeg === 90 || facts.rotationDeg === 270;
  return {
    id: randomUUID(),
    sha256: facts.sha256 ?? null,
    file: null,
    size_bytes: null,
    container: '',
    codec: facts.codec,
    width: facts.width,
    height: facts.height,
    rotation_deg: facts.rotationDeg,
    shown_width: sideways ? facts.height : facts.width,
    shown_height: sideways ? facts.width : facts.height,
    frames: facts.frames,
    time_base_numerator: facts.timeBase.numerator,
    time_base_denominator: facts.timeBase.denominator,
    duration_us: facts.durationUs,
    constant_rate: 0,
    mean_fps: facts.durationUs > 0 ? (facts.frames * 1_000_000) / facts.durationUs : 0,
    capture_fps: null,
    real_time_factor: 1,
    has_audio: 0,
    plays: null,
    proxy_reason: '',
    proxy_file: null,
    poster_file: null,
    filmstrip_file: null,
    filmstrip_pictures: 0,
  };
}
