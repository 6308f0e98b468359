import path from 'node:path';
import { ffmpeg } from '../media/clips.ts';

/** Makes a clip of a second and a half, 24 frames of 160 x 120 with sound, and the names of place and device in it. */
export async function shortClip(folder: string, name = 'set-1.mp4'): Promise<string> {
  const file = path.join(folder, name);
  await ffmpeg(
    ...['-f', 'lavfi', '-i', 'testsrc2=size=160x120:rate=16:duration=1.5'],
    ...['-f', 'lavfi', '-i', 'sine=frequency=300:duration=1.5'],
    ...['-c:v', 'libx264', '-preset', 'ultrafast', '-pix_fmt', 'yuv420p', '-c:a', 'aac', '-shortest'],
    ...['-metadata', 'location=+48.1+011.5/', '-metadata', 'com.android.model=Secretphone'],
    ...['-movflags', 'use_metadata_tags', file],
  );
  return file;
}
