// One copy of the engine in its own thread. It answers one question at a time, in the order they come.
import { dotnet } from '../_framework/dotnet.js';

const desk = dotnet.create().then(async api => (await api.getAssemblyExports('Hoopwright.Web.dll')).Hoopwright.Web.Engine.EngineDesk);

self.onmessage = async ({ data }) => {
  try {
    const answer = (await desk)[data.what](...data.args);
    self.postMessage({ id: data.id, answer });
  } catch (fault) {
    self.postMessage({ id: data.id, fault: String(fault?.message ?? fault) });
  }
};
