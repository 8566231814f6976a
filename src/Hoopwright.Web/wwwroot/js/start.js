// Registers what makes the page work without a network, and applies the reader's own choices before anything is drawn.
try {
  const theme = localStorage.getItem('hoopwright.theme');
  if (theme) document.documentElement.dataset.theme = theme;
  const language = localStorage.getItem('hoopwright.language');
  if (language) document.documentElement.lang = language;
} catch { /* a browser that keeps nothing still works */ }

if ('serviceWorker' in navigator) navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' });

// Plan files can be dropped anywhere at any time. What is dropped before the page is up waits until it asks (see page.js).
globalThis.hoopwrightDrops = { waiting: [], take: null };

const hasFiles = event => [...(event.dataTransfer?.types ?? [])].includes('Files');
document.addEventListener('dragover', event => { if (hasFiles(event)) event.preventDefault(); });
document.addEventListener('drop', event => {
  if (!hasFiles(event)) return;
  event.preventDefault();
  for (const file of event.dataTransfer.files) {
    if (hoopwrightDrops.take) hoopwrightDrops.take(file);
    else hoopwrightDrops.waiting.push(file);
  }
});
