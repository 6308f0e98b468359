import type { MediaTool } from '../media/tools/mediaTools.ts';
import { aboutFacts, readNotices } from '../report/about.ts';
import type { Handler } from './handler.ts';

export const getAbout: Handler<'about.get'> = async ({ settings }) => {
  const { version, tools, node, onnxRuntime } = await aboutFacts(settings.appFolder);
  return { version, ffmpeg: shown(tools?.ffmpeg), ffprobe: shown(tools?.ffprobe), node, onnxRuntime };
};

/** A program without its path, which can name the person who uses it. */
const shown = (tool: MediaTool | undefined) =>
  tool === undefined ? null : { version: tool.version.label, origin: tool.origin, reach: tool.reach };

export const getNotices: Handler<'about.notices'> = ({ settings }) => ({ text: readNotices(settings.appFolder) });
