// A second runtime on its own thread: it computes, so that the page never waits. The same files as the page's, already in the cache.
import { dotnet } from '../_framework/dotnet.js';

const { getAssemblyExports, getConfig, setModuleImports } = await dotnet.create();
let id = 0;
setModuleImports('desk', {
    reply: json => self.postMessage({ id, reply: json }),
    progress: share => self.postMessage({ id, share }),
});
const { Desk } = (await getAssemblyExports(getConfig().mainAssemblyName)).Arraywright.Page.Compute;

self.onmessage = message => {
    id = message.data.id;
    const from = performance.now();
    Desk.Ask(message.data.question);
    self.postMessage({ id, done: performance.now() - from });
};
self.postMessage({ id: -1, ready: true });
