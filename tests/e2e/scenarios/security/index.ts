import { addOneClip, footage } from '../../harness/oneClip.ts';
import type { Scenario } from '../../harness/scenario.ts';
import { checkBridge } from './bridge.ts';
import { checkMedia } from './media.ts';
import { checkNavigation } from './navigation.ts';
import { checkNetwork } from './network.ts';
import { checkPage } from './page.ts';
import { checkPolicy } from './policy.ts';

/** The platform's own security list, as far as it shows from outside while the app runs. */
export const security: Scenario = {
  name: 'security',
  run: async (bench, report) => {
    const app = await bench.launch(bench.newFolder('security'));
    await checkPage(app, report);
    await checkPolicy(app, report);
    await checkNavigation(app, report);
    await checkBridge(app, report);
    const { clipId } = await addOneClip(app, footage.squat);
    await checkMedia(app, report, clipId);
    await checkNetwork(app, report);
    await app.close();
  },
};
