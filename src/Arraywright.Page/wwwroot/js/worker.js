// A second runtime on its own thread: it computes, so that the page never waits. The same files as the page's, already in the cache.
import { dotnet } from '../_framework/dotnet.js';
import { setting } from './kept.js';

// Compiling every loop that runs a little costs more than it saves: only what runs very often is.
const { getAssemblyExports, getConfig, setModuleImports } = await dotnet.withRuntimeOptions(['--jiterpreter-minimum-trace-hit-count=100000']).create();
let id = 0;
let dropped = 0;
setModuleImports('desk', { progress: share => self.postMessage({ id, share }) });
const { Desk } = (await getAssemblyExports(getConfig().mainAssemblyName)).Arraywright.Page.Compute;

// Lets in what has been said to this thread meanwhile.
const { port1, port2 } = new MessageChannel();
const turn = () => new Promise(on => {
    port1.onmessage = on;
    port2.postMessage(0);
});

// Gives the weather file that a plan names, where the page was given it.
async function give(file) {
    const bytes = await setting('weather/' + file);
    if (bytes) Desk.Give(file, bytes);
    return bytes;
}

self.onmessage = async ({ data }) => {
    if (data.weather) return Desk.Give(data.weather, data.bytes);
    if (data.drop) return dropped = data.drop;
    id = data.id;
    const send = reply => self.postMessage({ id, reply }, [reply.buffer]);
    const file = Desk.Ask(data.question);
    if (file && !await give(file)) send(Desk.GoWithout(file));
    else {
        if (file) Desk.Ask(data.question);
        for (let reply; dropped !== id && (reply = Desk.Next()); await turn()) send(reply);
    }
    self.postMessage({ id, done: true });
};
self.postMessage({ id: -1, ready: true });
