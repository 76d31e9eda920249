// A second runtime on its own thread: it computes, so that the page never waits. The same files as the page's, already in the cache.
import { dotnet } from '../_framework/dotnet.js';
import { setting } from './kept.js';

const { getAssemblyExports, getConfig, setModuleImports } = await dotnet.create();
let id = 0;
setModuleImports('desk', {
    reply: json => self.postMessage({ id, reply: json }),
    progress: share => self.postMessage({ id, share }),
});
const { Desk } = (await getAssemblyExports(getConfig().mainAssemblyName)).Arraywright.Page.Compute;

self.onmessage = async ({ data }) => {
    if (data.weather) {
        Desk.Give(data.weather, data.bytes);
        return;
    }
    id = data.id;
    const from = performance.now();
    const file = Desk.Ask(data.question);
    if (file) {
        const bytes = await setting('weather/' + file);
        if (bytes) {
            Desk.Give(file, bytes);
            Desk.Ask(data.question);
        } else Desk.GoWithout(file);
    }
    self.postMessage({ id, done: performance.now() - from });
};
self.postMessage({ id: -1, ready: true });
