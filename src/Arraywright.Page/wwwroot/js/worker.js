// A second runtime on its own thread: it computes, so that the page never waits. The same files as the page's, already in the cache.
import { dotnet } from '../_framework/dotnet.js';
import { setting } from './kept.js';

// Compiling every loop that runs a little costs more than it saves: only what runs very often is.
const { getAssemblyExports, getConfig, setModuleImports } = await dotnet.withRuntimeOptions(['--jiterpreter-minimum-trace-hit-count=100000']).create();
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
    const file = Desk.Ask(data.question);
    if (file) {
        const bytes = await setting('weather/' + file);
        if (bytes) {
            Desk.Give(file, bytes);
            Desk.Ask(data.question);
        } else Desk.GoWithout(file);
    }
    self.postMessage({ id, done: true });
};
self.postMessage({ id: -1, ready: true });
