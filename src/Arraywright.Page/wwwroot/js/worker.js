import { dotnet } from '../_framework/dotnet.js';
const { getAssemblyExports, getConfig, setModuleImports } = await dotnet.create();
const exports = await getAssemblyExports(getConfig().mainAssemblyName);
self.onmessage = e => { const t = performance.now(); const a = exports.Arraywright.Page.Compute.Desk.Answer(e.data); self.postMessage([performance.now() - t, a]); };
self.postMessage('ready');
